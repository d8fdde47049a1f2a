/** The one kind of exception by which a service refuses a request, whatever asked it. */
@NullMarked
package org.standproud.refusal;

import org.jspecify.annotations.NullMarked;
