/** Remedies: the smallest changes with which a set-up holds, each proven by judging it again. */
@NullMarked
package org.standproud.advice.remedy;

import org.jspecify.annotations.NullMarked;
