/** The shop's own machines, vises, cutters and materials, looked up by name. */
@NullMarked
package org.standproud.setup.catalogue;

import org.jspecify.annotations.NullMarked;
