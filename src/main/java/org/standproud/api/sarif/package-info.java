/** Assessments in the Static Analysis Results Interchange Format (SARIF) 2.1.0. */
@NullMarked
package org.standproud.api.sarif;

import org.jspecify.annotations.NullMarked;
