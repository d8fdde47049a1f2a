/** Rule cards as their author works on them: write, check, try, compare, publish, roll back. */
@NullMarked
package org.standproud.web.cards;

import org.jspecify.annotations.NullMarked;
