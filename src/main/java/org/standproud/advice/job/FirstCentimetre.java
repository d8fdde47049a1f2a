package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Wording;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.holding.WeakestWay;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Setup;

/**
 * The go-ahead for the first centimetre of a pass, made of the facts of that pass. What to look for
 * is common practice, no source.
 *
 * @param hear what it should sound like
 * @param see what to watch, from behind the guard
 * @param feel what the hand wheel and the stock should do
 * @param stop when to stop at once
 */
public record FirstCentimetre(
    List<String> hear, List<String> see, List<String> feel, List<String> stop) {

  /** A lengthwise push is worth a word from this part of the push across on. */
  private static final double WORTH_A_WORD = 0.1;

  /** Copies the lists. */
  public FirstCentimetre {
    hear = List.copyOf(hear);
    see = List.copyOf(see);
    feel = List.copyOf(feel);
    stop = List.copyOf(stop);
  }

  static FirstCentimetre of(Setup setup, Evidence evidence, Wording wording) {
    Writer writer = new Writer(setup, evidence, wording);
    return new FirstCentimetre(writer.hear(), writer.see(), writer.feel(), writer.stop());
  }

  private record Writer(Setup setup, Evidence evidence, Wording wording) {

    List<String> hear() {
      List<String> lines = new ArrayList<>();
      lines.add(
          "An even beat of the teeth at " + words(Vocabulary.TOOTH_FREQUENCY) + ", no ringing.");
      lines.add(
          isKnown(Vocabulary.NATURAL_FREQUENCY)
              ? "Before you start, tap the plate: its own note is "
                  + words(Vocabulary.NATURAL_FREQUENCY)
                  + ". That note must not sing along in the cut."
              : "Before you start, tap the plate and keep its note in mind: it must not sing along"
                  + " in the cut.");
      return lines;
    }

    List<String> see() {
      List<String> lines = new ArrayList<>();
      lines.add(firstTouch());
      if (isKnown(Vocabulary.EDGE_DEFLECTION)) {
        lines.add(
            "The edge gives "
                + words(Vocabulary.EDGE_DEFLECTION)
                + " under the teeth; if you can see it move, it is more than that.");
      }
      lines.add("A witness line across stock and jaw top stays in one piece.");
      return lines;
    }

    private String firstTouch() {
      String jaw = word(Vocabulary.FIRST_CONTACT_JAW);
      if (jaw == null) {
        return "Which way the first bite pushes is not known: bring the cutter in as slowly as it"
            + " will cut.";
      }
      boolean pulls =
          evidence.get(Vocabulary.FIRST_CONTACT_PULLS) instanceof Value.Truth truth && truth.yes();
      return "The first bite pushes the plate toward the "
          + jaw
          + " with "
          + words(Vocabulary.FIRST_CONTACT_FORCE)
          + (pulls
              ? " and may pull it to the cutter: come in at half the feed or less."
              : ": come in at half the feed until the whole arc is in the stock.");
    }

    List<String> feel() {
      List<String> lines = new ArrayList<>();
      lines.add("With the spindle stopped, tug at the stock: nothing moves.");
      lines.add(
          setup.cut().feedDrive() == FeedDrive.HAND
              ? "The hand wheel resists steadily; it never runs ahead of your hand."
              : "A hand near the feed lever, none near the cutter; the table neither jumps nor"
                  + " stalls.");
      lengthwise().ifPresent(lines::add);
      return lines;
    }

    private Optional<String> lengthwise() {
      double plus = high(Vocabulary.PUSH_PLUS_X);
      double minus = high(Vocabulary.PUSH_MINUS_X);
      double across = Math.max(high(Vocabulary.PUSH_FIXED), high(Vocabulary.PUSH_MOVABLE));
      if (Math.max(plus, minus) < WORTH_A_WORD * across) {
        return Optional.empty();
      }
      Fact way = plus >= minus ? Vocabulary.PUSH_PLUS_X : Vocabulary.PUSH_MINUS_X;
      return Optional.of(
          "Along the jaws the cut pushes the plate toward "
              + (plus >= minus ? "+x" : "-x")
              + " with "
              + words(way)
              + ": the stop at that end takes it.");
    }

    List<String> stop() {
      List<String> lines = new ArrayList<>();
      String way = word(Vocabulary.WEAKEST_WAY);
      lines.add(
          way == null
              ? "Stop if the plate moves at all: which way it would go first is not known."
              : "This hold would first let the plate " + way + ". " + sign(way));
      lines.add("Stop if the sound climbs to a howl, the beat turns uneven or the feed jerks.");
      lines.add("Stop if chips turn to dust, change colour or weld to the cutter.");
      return lines;
    }

    private static String sign(String way) {
      if (way.equals(WeakestWay.SLIDE.words())) {
        return "Stop if a gap opens at a stop or the witness line breaks lengthwise.";
      }
      return way.equals(WeakestWay.LIFT.words())
          ? "Stop if a parallel comes loose under it or the face behind the cutter gets higher."
          : "Stop if a line of light or oil opens between stock and jaw, or the depth grows.";
    }

    private boolean isKnown(Fact fact) {
      return evidence.get(fact) instanceof Value.Quantity;
    }

    private String words(Fact fact) {
      return wording.words(fact, evidence.get(fact));
    }

    private double high(Fact fact) {
      return evidence.get(fact) instanceof Value.Quantity q ? q.band().high() : 0;
    }

    private @Nullable String word(Fact fact) {
      return evidence.get(fact) instanceof Value.Text text ? text.word() : null;
    }
  }
}
