/** The words of the pages, from one catalogue of messages. */
@NullMarked
package org.standproud.web.words;

import org.jspecify.annotations.NullMarked;
