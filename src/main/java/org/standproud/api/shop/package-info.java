/** What the shop keeps in files: catalogue, demonstration set-ups and rule cards, as loaded. */
@NullMarked
package org.standproud.api.shop;

import org.jspecify.annotations.NullMarked;
