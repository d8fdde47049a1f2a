package org.standproud.advice;

import com.fasterxml.jackson.annotation.JsonValue;
import org.standproud.setup.Worded;

/** What to do with the set-up, best first. */
public enum Verdict implements Worded {
  /** Nothing stands against it. */
  RUN("run"),
  /** It may run if the cautions are heeded. */
  RUN_WITH_CARE("run with care"),
  /** A stop hangs on something that is missing: nothing can be promised. Not to be run. */
  NOT_JUDGED("not judged"),
  /** Somebody may be hurt, or work or cutter lost. */
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
