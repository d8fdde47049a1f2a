package org.standproud.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.standproud.mechanics.OutsideValidity;

/**
 * A place where a model stops being true. A test states it and shows that the package refuses or
 * flags it there; while the page is being made, it is handed on to the page.
 *
 * @param subject the section of the page
 * @param beyond where the model ends and why
 * @param then what the package does there
 */
public record KnownLimit(Subject subject, String beyond, String then) {

  private static final List<Consumer<KnownLimit>> READERS = new CopyOnWriteArrayList<>();

  static void collect(Consumer<KnownLimit> reader, Runnable tests) {
    READERS.add(reader);
    try {
      tests.run();
    } finally {
      READERS.remove(reader);
    }
  }

  /**
   * States that the package refuses.
   *
   * @param quantity what its refusal names
   * @param attempt what is refused
   */
  public static void refused(Subject subject, String beyond, String quantity, Runnable attempt) {
    assertThat(catchThrowable(attempt::run))
        .isInstanceOf(OutsideValidity.class)
        .hasMessageContaining(quantity);
    add(new KnownLimit(subject, beyond, "refused, naming the " + quantity));
  }

  /**
   * States that the package answers, and says that the answer is in doubt.
   *
   * @param how how it says so
   * @param flagged whether it did
   */
  public static void flagged(Subject subject, String beyond, String how, boolean flagged) {
    assertThat(flagged).as(beyond).isTrue();
    add(new KnownLimit(subject, beyond, how));
  }

  private static void add(KnownLimit limit) {
    READERS.forEach(reader -> reader.accept(limit));
  }
}
