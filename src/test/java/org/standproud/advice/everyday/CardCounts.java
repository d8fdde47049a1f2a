package org.standproud.advice.everyday;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.standproud.advice.whatif.Judged;
import org.standproud.rules.card.Severity;
import org.standproud.rules.trace.CardKind;

/** How often each card speaks over many set-ups: as a finding, failed or open. */
final class CardCounts {

  private final Map<String, Count> byCard = new TreeMap<>();
  private int setups;

  /** One card: how often it speaks, how often with no other one, and what always speaks with it. */
  static final class Count {
    private int speaks;
    private int alone;
    private int caution;
    private int stop;
    private final Set<String> always = new TreeSet<>();

    int speaks() {
      return speaks;
    }

    /** Times at which no other stop or caution speaks. */
    int alone() {
      return alone;
    }

    /** Times at which it speaks as a caution. */
    int caution() {
      return caution;
    }

    /** Times at which it speaks as a stop. */
    int stop() {
      return stop;
    }

    /** Stops and cautions that speak every time that it does. */
    Set<String> always() {
      return always;
    }
  }

  void add(Judged judged) {
    setups++;
    Set<String> grave =
        judged.findings().stream()
            .filter(finding -> finding.severity() != Severity.NOTE)
            .map(CardKind::id)
            .collect(Collectors.toCollection(TreeSet::new));
    judged.findings().forEach(finding -> add(finding, grave));
  }

  private void add(CardKind finding, Set<String> grave) {
    Set<String> others = new TreeSet<>(grave);
    others.remove(finding.id());
    Count count = byCard.computeIfAbsent(finding.id(), id -> new Count());
    if (count.speaks == 0) {
      count.always.addAll(others);
    } else {
      count.always.retainAll(others);
    }
    count.speaks++;
    count.alone += others.isEmpty() ? 1 : 0;
    count.caution += finding.severity() == Severity.CAUTION ? 1 : 0;
    count.stop += finding.severity() == Severity.STOP ? 1 : 0;
  }

  int setups() {
    return setups;
  }

  Map<String, Count> byCard() {
    return byCard;
  }
}
