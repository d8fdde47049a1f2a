package org.standproud.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.standproud.setup.Band;

/**
 * A source of published values. A test gives each value through a row of it; that checks the value
 * and, while the page is being made, hands it on to the page.
 *
 * @param subject the section of the page
 * @param source the publication
 * @param tag how surely the values are known
 * @param kind what the values are
 */
public record PublishedTable(Subject subject, String source, SourceTag tag, ResultKind kind) {

  /** The JUnit tag of every test that gives rows. */
  public static final String TESTS = "published";

  private static final List<Consumer<Figure>> READERS = new CopyOnWriteArrayList<>();

  /** A source of results that it printed, or of values derived from its formula. */
  public PublishedTable(Subject subject, String source, SourceTag tag) {
    this(
        subject,
        source,
        tag,
        tag == SourceTag.DERIVED ? ResultKind.FORMULA : ResultKind.RECOMPUTED);
  }

  static void collect(Consumer<Figure> reader, Runnable tests) {
    READERS.add(reader);
    try {
      tests.run();
    } finally {
      READERS.remove(reader);
    }
  }

  /** A case of the source, by its name. */
  public Row row(String name) {
    return new Row(this, name);
  }

  /**
   * A case of a source.
   *
   * @param table the source
   * @param name the case
   */
  public record Row(PublishedTable table, String name) {

    /**
     * Checks one figure and records it.
     *
     * @param quantity what it is
     * @param unit its unit
     * @param published as printed
     * @param computed by the package, in the same unit
     * @param tolerance greatest difference allowed, in the same unit
     */
    public Row figure(
        String quantity, String unit, double published, double computed, double tolerance) {
      Figure figure = new Figure(table, name, quantity, unit, published, computed, tolerance);
      READERS.forEach(reader -> reader.accept(figure));
      assertThat(computed).as("%s, %s", name, quantity).isCloseTo(published, within(tolerance));
      return this;
    }

    /** The same with the tolerance as a share of the published value, in per cent. */
    public Row percent(
        String quantity, String unit, double published, double computed, double percent) {
      return figure(quantity, unit, published, computed, Math.abs(published) * percent / 100);
    }

    /**
     * Checks that a band holds a published value: what is computed is the value of the band nearest
     * to it.
     *
     * @param tolerance by how much the band may miss it, for figures that were rounded
     */
    public Row held(String quantity, String unit, double published, Band band, double tolerance) {
      double nearest = Math.max(band.low(), Math.min(published, band.high()));
      return figure(quantity, unit, published, nearest, tolerance);
    }

    /** Checks that a value taken on the safe side is no more than the published one. */
    public Row noMoreThan(String quantity, String unit, double published, double computed) {
      assertThat(computed).as("%s, %s", name, quantity).isLessThanOrEqualTo(published);
      return figure(quantity, unit, published, computed, published);
    }
  }
}
