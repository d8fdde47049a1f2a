package org.standproud.mechanics.evidence.stage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.Worded;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldPointer;

/** Collects the values of the facts of one set-up while its mechanics is worked through. */
final class FactSheet {

  /** What a number lacks that exists only where the stock holds. */
  private static final String LETS_GO = "a hold that holds: in every draw the stock lets go";

  private final Map<Fact, EvidenceValue> values = new LinkedHashMap<>();
  private final List<String> refusals = new ArrayList<>();
  private final List<String> questions = new ArrayList<>();

  /** What an entry stood on: fields of the request, and what was assumed. */
  record Basis(List<FieldPointer> inputs, List<Assumption> assumptions) {

    static Basis on(Field<?, ?>... inputs) {
      return new Basis(Arrays.stream(inputs).map(FieldPointer::to).toList(), List.of());
    }

    /** The field that states a fact; nothing for a computed one. */
    static Basis of(Fact fact) {
      FieldPointer field = fact.field();
      return new Basis(field == null ? List.of() : List.of(field), List.of());
    }

    Basis assuming(List<Assumption> more) {
      List<Assumption> all = new ArrayList<>(assumptions);
      more.stream().filter(a -> !all.contains(a)).forEach(all::add);
      return new Basis(inputs, all);
    }

    Basis and(Basis other) {
      List<FieldPointer> fields = new ArrayList<>(inputs);
      other.inputs.stream().filter(f -> !fields.contains(f)).forEach(fields::add);
      return new Basis(fields, assumptions).assuming(other.assumptions);
    }
  }

  /**
   * A number, told at most as the end of the range that makes sense for its fact: a plate on a
   * hinge has no deflection worth a number, only "that much or more".
   */
  void number(Fact fact, Band band, Basis basis) {
    put(fact, new Value.Quantity(inRange(fact, band)), basis);
  }

  /**
   * A number over the draws. Margins are held to their greatest, where next to nothing is asked;
   * any other number beyond the range that makes sense does not exist in that draw.
   */
  void number(Fact fact, int draws, IntToDoubleFunction value, Basis basis) {
    Fact.Number range = range(fact);
    double[] values = new double[draws];
    int there = 0;
    boolean same = true;
    for (int draw = 0; draw < draws; draw++) {
      double v = value.applyAsDouble(draw);
      if (range.greatest() == Vocabulary.GREATEST_MARGIN) {
        v = Math.max(range.least(), Math.min(v, range.greatest()));
      }
      values[draw] = v >= range.least() && v <= range.greatest() ? v : Double.NaN;
      there += Double.isNaN(values[draw]) ? 0 : 1;
      same &= values[draw] == values[0];
    }
    if (there == 0) {
      letsGo(fact, basis);
    } else {
      put(fact, new Value.Quantity(same ? Sample.exactly(values[0]) : Sample.of(values)), basis);
    }
  }

  /** Nothing, because the stock lets go in every draw. */
  void letsGo(Fact fact, Basis basis) {
    put(fact, new Value.Missing(LETS_GO, true), basis);
  }

  /** Yes or no in each draw. */
  void yesNo(Fact fact, DrawSet yes, Basis basis) {
    int count = yes.count();
    put(
        fact,
        count == 0 || count == yes.draws() ? new Value.Truth(count > 0) : new Value.Truth(yes),
        basis);
  }

  /** One of two words in each draw. */
  void word(Fact fact, DrawSet first, Worded word, Worded other, Basis basis) {
    String most = (first.share() >= 0.5 ? word : other).words();
    put(
        fact,
        first.count() == 0 || first.count() == first.draws()
            ? new Value.Text(most)
            : new Value.Text(most, Map.of(word.words(), first, other.words(), first.not())),
        basis);
  }

  /** A list of numbers, each told like a number. */
  void numbers(Fact fact, List<Band> bands, Basis basis) {
    put(fact, new Value.Quantities(bands.stream().map(b -> inRange(fact, b)).toList()), basis);
  }

  private static Fact.Number range(Fact fact) {
    Fact.Number range = fact.number();
    if (range == null) {
      throw new IllegalArgumentException(fact.name() + " is no number");
    }
    return range;
  }

  private static Band inRange(Fact fact, Band band) {
    Fact.Number range = range(fact);
    return band.map(v -> Math.max(range.least(), Math.min(v, range.greatest())));
  }

  void number(Fact fact, double value, Basis basis) {
    number(fact, Band.exactly(value), basis);
  }

  void word(Fact fact, Worded word, Basis basis) {
    put(fact, new Value.Text(word.words()), basis);
  }

  void yesNo(Fact fact, boolean yes, Basis basis) {
    put(fact, new Value.Truth(yes), basis);
  }

  /** Nothing, until the question of the fact is answered. */
  void missing(Fact fact, Basis basis) {
    String question = fact.origin().question();
    if (question == null) {
      throw new IllegalStateException("nothing is asked where " + fact.name() + " is missing");
    }
    put(fact, new Value.Missing(question), basis);
  }

  /** A number as the request states it; missing if it is null. */
  void stated(Fact fact, @Nullable Double value) {
    if (value == null) {
      missing(fact, Basis.of(fact));
    } else {
      number(fact, value, Basis.of(fact));
    }
  }

  /** A word as the request states it; missing if it is null. */
  void stated(Fact fact, @Nullable Worded value) {
    if (value == null) {
      missing(fact, Basis.of(fact));
    } else {
      word(fact, value, Basis.of(fact));
    }
  }

  /** Yes or no as the request states it; missing if it is null. */
  void stated(Fact fact, @Nullable Boolean value) {
    if (value == null) {
      missing(fact, Basis.of(fact));
    } else {
      yesNo(fact, value, Basis.of(fact));
    }
  }

  /** What a fact that was given stands on. */
  Basis basis(Fact fact) {
    EvidenceValue given = values.get(fact);
    return given == null ? Basis.on() : new Basis(given.inputs(), given.assumptions());
  }

  void put(Fact fact, Value value, Basis basis) {
    EvidenceValue entry = new EvidenceValue(fact, value, basis.inputs(), basis.assumptions());
    if (values.put(fact, entry) != null) {
      throw new IllegalStateException("the fact " + fact.name() + " was given twice");
    }
  }

  /**
   * Runs one stage. If it refuses its input as outside the range of its formulas, the facts it did
   * not give stay missing, with its reason.
   */
  void attempt(Runnable stage) {
    try {
      stage.run();
    } catch (OutsideValidity refusal) {
      refuse(String.valueOf(refusal.getMessage()));
    }
  }

  /** Leaves what is not given yet missing until a question is answered. */
  void ask(String question) {
    questions.add(question);
  }

  /** Leaves what is not given yet missing, for a reason. */
  void refuse(String reason) {
    refusals.add(reason);
  }

  /**
   * The evidence, one value for each fact of the vocabulary.
   *
   * @throws IllegalStateException if a fact was left out though no stage refused its input
   */
  Evidence evidence() {
    List<EvidenceValue> inOrder = new ArrayList<>();
    for (Fact fact : Vocabulary.all()) {
      EvidenceValue value = values.get(fact);
      inOrder.add(value == null ? beyondTheFormulas(fact) : value);
    }
    return new Evidence(inOrder);
  }

  private EvidenceValue beyondTheFormulas(Fact fact) {
    if (!questions.isEmpty()) {
      String asked = String.join("; ", questions);
      return new EvidenceValue(fact, new Value.Missing(asked), List.of(), List.of());
    }
    if (refusals.isEmpty()) {
      throw new IllegalStateException("no stage gave the fact " + fact.name());
    }
    String reason =
        "a set-up within the range of the formulas (" + String.join("; ", refusals) + ")";
    return new EvidenceValue(fact, new Value.Missing(reason), List.of(), List.of());
  }
}
