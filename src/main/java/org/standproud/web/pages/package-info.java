/** The pages: set-up, answer, rules; written on the server, without script. */
@NullMarked
package org.standproud.web.pages;

import org.jspecify.annotations.NullMarked;
