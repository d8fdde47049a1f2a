/** Server-rendered pages that work without JavaScript: set-up, answer, rules. */
@NullMarked
package org.standproud.web.pages;

import org.jspecify.annotations.NullMarked;
