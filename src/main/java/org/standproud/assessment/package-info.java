/** The one path from the text of a request to an answer that is on disk. */
@NullMarked
package org.standproud.assessment;

import org.jspecify.annotations.NullMarked;
