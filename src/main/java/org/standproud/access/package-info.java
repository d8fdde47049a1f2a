/** Who may do what: the roles, and the one table of what each of them may call. */
@NullMarked
package org.standproud.access;

import org.jspecify.annotations.NullMarked;
