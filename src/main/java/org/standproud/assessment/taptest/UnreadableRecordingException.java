package org.standproud.assessment.taptest;

import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** A recording that cannot be read, or holds no measurement. */
public final class UnreadableRecordingException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Says why.
   *
   * @param why what is wrong and what to do, in whole sentences
   */
  UnreadableRecordingException(String why) {
    super(RefusalKind.RECORDING_REFUSED, why);
  }
}
