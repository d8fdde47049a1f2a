package org.standproud.rules.language;

import java.util.Collection;
import java.util.Comparator;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.jspecify.annotations.Nullable;

/** The known name probably meant by a wrong one. */
public final class Nearest {

  /** Longer names are not compared. */
  private static final int LONGEST = 80;

  private Nearest() {}

  /**
   * The nearest known name by edit distance, or one that begins with the wrong name.
   *
   * @param wrong the wrong name
   * @param known the known names
   * @return null if none is near
   */
  public static @Nullable String of(String wrong, Collection<String> known) {
    if (wrong.isBlank() || wrong.length() > LONGEST) {
      return null;
    }
    LevenshteinDistance distance = new LevenshteinDistance(Math.max(2, wrong.length() / 3));
    return known.stream()
        .filter(name -> distance.apply(wrong, name) >= 0)
        .min(
            Comparator.comparing((String name) -> distance.apply(wrong, name))
                .thenComparing(Comparator.naturalOrder()))
        .orElseGet(
            () ->
                known.stream()
                    .filter(name -> wrong.length() > 2 && name.startsWith(wrong))
                    .min(Comparator.naturalOrder())
                    .orElse(null));
  }
}
