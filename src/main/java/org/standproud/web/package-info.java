/** What people look at: pages, drawings and the printed sheet, on top of everything else. */
@NullMarked
package org.standproud.web;

import org.jspecify.annotations.NullMarked;
