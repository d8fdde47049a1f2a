/** The exceptions by which a service refuses a request, independent of the transport. */
@NullMarked
package org.standproud.refusal;

import org.jspecify.annotations.NullMarked;
