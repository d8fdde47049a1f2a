/** The security filters of every call: authentication, authorization, rate limits. */
@NullMarked
package org.standproud.api.gate;

import org.jspecify.annotations.NullMarked;
