/** Tables as spreadsheets read them. */
@NullMarked
package org.standproud.api.csv;

import org.jspecify.annotations.NullMarked;
