/** The access journal: denied calls and key changes. */
@NullMarked
package org.standproud.access.journal;

import org.jspecify.annotations.NullMarked;
