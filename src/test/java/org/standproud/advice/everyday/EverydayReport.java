package org.standproud.advice.everyday;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.standproud.advice.DemoShop;
import org.standproud.advice.Verdict;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.request.FieldPointer;

/** What the service answers to the everyday set-ups, and how often each card speaks. */
final class EverydayReport {

  /** Set-ups drawn at random for the counts of the cards. */
  static final int RANDOM_SETUPS = 1000;

  private static final long SEED = 20261130;

  /** The five main facts, each with the ratio of its ends that is aimed at. */
  static final Map<Fact, Double> WIDTH_AIMED_AT = aims();

  private final List<CheckedSetup> checked = new ArrayList<>();
  private final Map<Fact, List<Double>> widths = new LinkedHashMap<>();
  private final Set<FieldPointer> pointers = new LinkedHashSet<>();
  private final CardCounts cards = new CardCounts();

  private EverydayReport() {}

  private static Map<Fact, Double> aims() {
    Map<Fact, Double> aims = new LinkedHashMap<>();
    aims.put(Vocabulary.HOLDING_MARGIN, 3.0);
    aims.put(Vocabulary.TIP_MARGIN_MOVABLE, 3.0);
    aims.put(Vocabulary.EDGE_DEFLECTION, 3.0);
    aims.put(Vocabulary.NATURAL_FREQUENCY, 1.5);
    aims.put(Vocabulary.STABILITY_MARGIN, 5.0);
    return aims;
  }

  static EverydayReport made() {
    EverydayReport report = new EverydayReport();
    Trials trials = DemoShop.trials();
    for (EverydaySetup row : EverydayTable.rows()) {
      Judged judged = trials.of(row.setup());
      report.checked.add(CheckedSetup.of(row, judged));
      report.measure(judged);
      report.point(judged.evidence());
    }
    EverydayShop shop = new EverydayShop(SEED);
    for (int i = 0; i < RANDOM_SETUPS; i++) {
      report.cards.add(DemoShop.trials().of(shop.next().setup()));
    }
    return report;
  }

  private void measure(Judged judged) {
    WIDTH_AIMED_AT
        .keySet()
        .forEach(
            fact -> {
              if (judged.evidence().get(fact) instanceof Value.Quantity quantity) {
                Band band = quantity.band();
                double ratio = band.low() > 0 ? band.high() / band.low() : Double.POSITIVE_INFINITY;
                widths.computeIfAbsent(fact, f -> new ArrayList<>()).add(ratio);
              }
            });
  }

  private void point(Evidence evidence) {
    for (EvidenceValue value : evidence.values()) {
      pointers.addAll(value.inputs());
      value.assumptions().forEach(assumption -> pointers.add(assumption.input()));
    }
  }

  /** The fields of the request that the evidence of the set-ups points at. */
  Set<FieldPointer> pointers() {
    return pointers;
  }

  List<CheckedSetup> checked() {
    return checked;
  }

  List<CheckedSetup> sound() {
    return checked.stream().filter(one -> !one.bad()).toList();
  }

  List<CheckedSetup> falseAlarms() {
    return checked.stream().filter(CheckedSetup::falseAlarm).toList();
  }

  List<CheckedSetup> missed() {
    return checked.stream().filter(CheckedSetup::missed).toList();
  }

  /** How many of those of a machinist's verdict get each verdict of the service. */
  Map<Verdict, Long> answers(MachinistVerdict machinist) {
    Map<Verdict, Long> counts = new EnumMap<>(Verdict.class);
    checked.stream()
        .filter(one -> one.row().machinist() == machinist)
        .forEach(one -> counts.merge(one.verdict(), 1L, Long::sum));
    return counts;
  }

  /**
   * Median over the set-ups of the high end of a fact over its low end, without unit.
   *
   * @return infinite if more than half have no low end above zero, NaN if the fact is nowhere known
   */
  double medianWidth(Fact fact) {
    List<Double> sorted = widths.getOrDefault(fact, List.of()).stream().sorted().toList();
    return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
  }

  CardCounts cards() {
    return cards;
  }
}
