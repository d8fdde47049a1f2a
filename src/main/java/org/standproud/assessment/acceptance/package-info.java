/**
 * What people decided about findings, and whether it still covers what is found now. An acceptance
 * is shown beside its finding; it takes no finding away and changes no verdict.
 */
@NullMarked
package org.standproud.assessment.acceptance;

import org.jspecify.annotations.NullMarked;
