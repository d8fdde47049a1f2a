/** Everything people look at: pages, drawings and the printed sheet. */
@NullMarked
package org.standproud.web;

import org.jspecify.annotations.NullMarked;
