/** Plans of passes, each judged on the stock left by then. */
@NullMarked
package org.standproud.advice.plan;

import org.jspecify.annotations.NullMarked;
