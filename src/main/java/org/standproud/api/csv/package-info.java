/** CSV tables that spreadsheets can read. */
@NullMarked
package org.standproud.api.csv;

import org.jspecify.annotations.NullMarked;
