package org.standproud.mechanics.evidence.stage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.evidence.Assumption;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.Worded;

/** Collects the values of the facts of one set-up while its mechanics is worked through. */
final class FactSheet {

  private final Map<Fact, EvidenceValue> values = new LinkedHashMap<>();
  private final List<String> refusals = new ArrayList<>();

  /** What an entry stood on: request paths or other facts, and what was assumed. */
  record Basis(List<String> inputs, List<Assumption> assumptions) {

    static Basis on(String... inputs) {
      return new Basis(List.of(inputs), List.of());
    }

    Basis assuming(List<Assumption> more) {
      List<Assumption> all = new ArrayList<>(assumptions);
      more.stream().filter(a -> !all.contains(a)).forEach(all::add);
      return new Basis(inputs, all);
    }

    Basis and(Basis other) {
      List<String> paths = new ArrayList<>(inputs);
      other.inputs.stream().filter(p -> !paths.contains(p)).forEach(paths::add);
      return new Basis(paths, assumptions).assuming(other.assumptions);
    }
  }

  /**
   * A number, told at most as the end of the range that makes sense for its fact: a plate on a
   * hinge has no deflection worth a number, only "that much or more".
   */
  void number(Fact fact, Band band, Basis basis) {
    put(fact, new Value.Quantity(inRange(fact, band)), basis);
  }

  /** A list of numbers, each told like a number. */
  void numbers(Fact fact, List<Band> bands, Basis basis) {
    put(fact, new Value.Quantities(bands.stream().map(b -> inRange(fact, b)).toList()), basis);
  }

  private static Band inRange(Fact fact, Band band) {
    Fact.Number range = fact.number();
    if (range == null) {
      throw new IllegalArgumentException(fact.name() + " is no number");
    }
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

  void missing(Fact fact, String measure, Basis basis) {
    put(fact, new Value.Missing(measure), basis);
  }

  void given(Fact fact, @Nullable Double value, String path, String measure) {
    if (value == null) {
      missing(fact, measure, Basis.on(path));
    } else {
      number(fact, value, Basis.on(path));
    }
  }

  void given(Fact fact, @Nullable Worded value, String path, String measure) {
    if (value == null) {
      missing(fact, measure, Basis.on(path));
    } else {
      word(fact, value, Basis.on(path));
    }
  }

  void given(Fact fact, @Nullable Boolean value, String path, String measure) {
    if (value == null) {
      missing(fact, measure, Basis.on(path));
    } else {
      yesNo(fact, value, Basis.on(path));
    }
  }

  /** The band given for a fact, if a stage gave one. */
  Optional<Band> number(Fact fact) {
    EvidenceValue given = values.get(fact);
    return given != null && given.value() instanceof Value.Quantity quantity
        ? Optional.of(quantity.band())
        : Optional.empty();
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
    if (refusals.isEmpty()) {
      throw new IllegalStateException("no stage gave the fact " + fact.name());
    }
    String reason =
        "a set-up within the range of the formulas (" + String.join("; ", refusals) + ")";
    return new EvidenceValue(fact, new Value.Missing(reason), List.of(), List.of());
  }
}
