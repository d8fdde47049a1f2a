/** The set-up page: a form made from the very fields that requests are read with. */
@NullMarked
package org.standproud.web.form;

import org.jspecify.annotations.NullMarked;
