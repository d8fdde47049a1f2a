/** Access control: roles and the access table. */
@NullMarked
package org.standproud.access;

import org.jspecify.annotations.NullMarked;
