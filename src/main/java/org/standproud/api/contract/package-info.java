/** The contract of the service as it describes itself in OpenAPI. */
@NullMarked
package org.standproud.api.contract;

import org.jspecify.annotations.NullMarked;
