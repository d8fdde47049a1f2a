package org.standproud.advice;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.FactChange;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.Margin;
import org.standproud.rules.trace.Placeholder;
import org.standproud.rules.trace.Reading;
import org.standproud.setup.units.QuantityKind;

/** Writes the finding of a card in the caller's units. */
final class FindingWriter {

  private final Map<String, Fact> facts;
  private final Evidence evidence;
  private final Wording wording;

  FindingWriter(Map<String, Fact> facts, Evidence evidence, Wording wording) {
    this.facts = facts;
    this.evidence = evidence;
    this.wording = wording;
  }

  Finding finding(CardTrace trace) {
    return new Finding(
        trace.id(),
        trace.card().title(),
        trace.kind(),
        trace.severity(),
        trace.share(),
        trace.card().protects().words(),
        trace.kind() == Kind.OPEN ? unknown(trace) : message(trace),
        read(trace).stream().map(f -> wording.quantity(f, evidence.get(f))).toList(),
        distance(trace),
        trace.changes().stream()
            .map(c -> c.by() + " makes it a " + c.to().words() + ": " + c.because())
            .toList(),
        MissingInputs.of(trace, evidence),
        Confidence.of(trace, evidence),
        trace.card().remedy(),
        trace.card().why(),
        trace.card().source());
  }

  private Set<Fact> read(CardTrace trace) {
    Set<Fact> read = new LinkedHashSet<>();
    trace.conditions().forEach(c -> c.read().stream().map(Reading::fact).forEach(read::add));
    return read;
  }

  private String unknown(CardTrace trace) {
    List<String> missing = MissingInputs.of(trace, evidence);
    return missing.isEmpty()
        ? "Can't be worked out: the plate lets go first."
        : "Can't tell until this is known: " + String.join("; ", missing) + ".";
  }

  private String message(CardTrace trace) {
    String message = trace.card().message().text();
    for (Placeholder placeholder : trace.placeholders()) {
      message = message.replace("{" + placeholder.name() + "}", words(trace, placeholder));
    }
    return message;
  }

  private String words(CardTrace trace, Placeholder placeholder) {
    Fact fact = facts.get(placeholder.name());
    if (placeholder.written() == null && fact != null) {
      return wording.inSentence(fact, placeholder.value(), Side.of(fact, trace));
    }
    if (placeholder.dimension() != null && placeholder.value() instanceof Value.Quantity number) {
      return wording.words(
          DecidingNumber.kind(trace, placeholder.dimension()), number.band().likely());
    }
    return placeholder.written() == null ? placeholder.name() : placeholder.written();
  }

  private @Nullable String distance(CardTrace trace) {
    Margin margin = trace.margin();
    if (margin == null || margin.dimension() == null) {
      return null;
    }
    QuantityKind kind = DecidingNumber.kind(trace, margin.dimension());
    StringBuilder text =
        new StringBuilder("the limit is ")
            .append(wording.words(kind, margin.threshold()))
            .append(margin.place() == null ? ", this is " : ", number " + margin.place() + " is ")
            .append(DecidingNumber.words(trace, margin, wording));
    if (trace.truth() == Truth.EITHER) {
      text.append("; it happens in ").append(percent(trace.share())).append(" of the draws");
    }
    for (FactChange change : margin.changes()) {
      Double target = change.certain() != null ? change.certain() : change.likely();
      Fact.Number number = change.fact().number();
      Fact.Leeway leeway = change.fact().leeway();
      if (target != null
          && number != null
          && leeway != null
          && leeway.allows(change.from(), target)) {
        text.append("; ")
            .append(margin.of(change.fact()))
            .append(" of ")
            .append(wording.words(number.kind(), target))
            .append(" would clear this card");
      }
    }
    return text.toString();
  }

  private static String percent(double share) {
    double percent = 100 * share;
    return (percent < 1 ? "less than 1" : String.valueOf(Math.round(percent))) + " %";
  }
}
