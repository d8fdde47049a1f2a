/** The shop's own data: the catalogue with its revisions, and the rule cards of its folder. */
@NullMarked
package org.standproud.shop;

import org.jspecify.annotations.NullMarked;
