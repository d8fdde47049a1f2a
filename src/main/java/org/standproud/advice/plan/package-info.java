/** The passes that take off what has to come off, each judged on the stock that is left by then. */
@NullMarked
package org.standproud.advice.plan;

import org.jspecify.annotations.NullMarked;
