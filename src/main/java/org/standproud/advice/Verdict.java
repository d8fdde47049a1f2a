package org.standproud.advice;

import com.fasterxml.jackson.annotation.JsonValue;
import org.standproud.setup.Worded;

/** The verdict on a set-up, best first. */
public enum Verdict implements Worded {
  /** Nothing found against it. */
  RUN("run"),
  /** It may run if the cautions are heeded. */
  RUN_WITH_CARE("run with care"),
  /** A stop depends on something that is missing: do not run. */
  NOT_JUDGED("not judged"),
  /** Danger to people, work or cutter. */
  DO_NOT_RUN("do not run");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  @JsonValue
  @Override
  public String words() {
    return words;
  }

  @Override
  public String toString() {
    return words();
  }
}
