package org.standproud.advice.everyday;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.standproud.advice.Verdict;

/** What a good machinist says of a set-up, and the verdicts of the service that agree with it. */
enum MachinistVerdict {
  RUN(Verdict.RUN, Verdict.RUN_WITH_CARE),
  RUN_OR_WITH_CARE(Verdict.RUN, Verdict.RUN_WITH_CARE),
  RUN_WITH_CARE(Verdict.RUN_WITH_CARE),
  /** Also a set-up that cannot be judged is not to be run. */
  DO_NOT_RUN(Verdict.DO_NOT_RUN, Verdict.NOT_JUDGED);

  private final Set<Verdict> agrees;

  MachinistVerdict(Verdict first, Verdict... more) {
    agrees = EnumSet.of(first, more);
  }

  static MachinistVerdict of(String words) {
    return valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  boolean agreesWith(Verdict verdict) {
    return agrees.contains(verdict);
  }

  /** Whether the set-up is bad and the service lets it run. */
  boolean missedBy(Verdict verdict) {
    return this == DO_NOT_RUN && !agreesWith(verdict);
  }

  /** Whether the set-up is sound and the service does not let it run. */
  boolean refusedBy(Verdict verdict) {
    return this != DO_NOT_RUN && (verdict == Verdict.NOT_JUDGED || verdict == Verdict.DO_NOT_RUN);
  }
}
