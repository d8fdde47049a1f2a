/** The sheet for the machine: one or two printed pages. */
@NullMarked
package org.standproud.web.sheet;

import org.jspecify.annotations.NullMarked;
