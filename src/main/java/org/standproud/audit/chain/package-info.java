/**
 * A keyed hash chain over the records, its signed checkpoints, and the check that finds where it
 * was broken.
 */
@NullMarked
package org.standproud.audit.chain;

import org.jspecify.annotations.NullMarked;
