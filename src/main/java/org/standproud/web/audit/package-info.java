/** The records as an auditor looks at them: search, open, prove, give again, decide. */
@NullMarked
package org.standproud.web.audit;

import org.jspecify.annotations.NullMarked;
