/**
 * Acceptances of findings, and whether they still cover the current findings. An acceptance is
 * shown beside its finding; it removes no finding and changes no verdict.
 */
@NullMarked
package org.standproud.assessment.acceptance;

import org.jspecify.annotations.NullMarked;
