/** The page that plans a whole job and shows its route as a card. */
@NullMarked
package org.standproud.web.job;

import org.jspecify.annotations.NullMarked;
