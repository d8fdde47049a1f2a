package org.standproud.advice.sensitivity;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Setup;
import org.standproud.setup.request.FieldPointer;

/**
 * An input that is not known exactly.
 *
 * @param input where it stands in the request
 * @param measure how to find out, as a machinist would say it
 * @param cases what it may turn out to be, the ends of its band or each word
 * @param likely the set-up with the input at its likely value; null if none is likelier
 */
record Unknown(FieldPointer input, String measure, List<Case> cases, @Nullable Setup likely) {

  Unknown {
    cases = List.copyOf(cases);
  }

  /**
   * One thing it may turn out to be.
   *
   * @param value in the caller's words
   * @param setup the set-up if it is so
   */
  record Case(String value, Setup setup) {}
}
