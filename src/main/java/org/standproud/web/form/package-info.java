/** The set-up page, generated from the fields that the request reader uses. */
@NullMarked
package org.standproud.web.form;

import org.jspecify.annotations.NullMarked;
