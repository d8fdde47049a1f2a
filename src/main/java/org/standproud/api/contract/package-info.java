/** The OpenAPI description of the service. */
@NullMarked
package org.standproud.api.contract;

import org.jspecify.annotations.NullMarked;
