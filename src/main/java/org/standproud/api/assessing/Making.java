package org.standproud.api.assessing;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Advice;
import org.standproud.advice.Adviser;
import org.standproud.advice.Finding;
import org.standproud.api.json.PlainJson;
import org.standproud.audit.Judged;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.decisions.SaidThen;
import org.standproud.audit.decisions.ShownAcceptance;
import org.standproud.audit.replay.Made;
import org.standproud.audit.replay.Occasion;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Setup;
import org.standproud.setup.reading.CanonicalText;

/** Makes an answer from a set-up, the first time and in every replay. */
public final class Making {

  private final Function<Setup, Evidence> mechanics;
  private final Watch watch;

  /**
   * Making by some mechanics, which nobody watches.
   *
   * @param mechanics works out the evidence
   */
  public Making(Function<Setup, Evidence> mechanics) {
    this(mechanics, Watch.NOBODY);
  }

  /**
   * Making by some mechanics.
   *
   * @param mechanics works out the evidence
   * @param watch sees each stage
   */
  public Making(Function<Setup, Evidence> mechanics, Watch watch) {
    this.mechanics = mechanics;
    this.watch = watch;
  }

  /**
   * Makes an answer.
   *
   * @param setup the set-up
   * @param rules what judges it
   * @param occasion what else the answer says
   */
  public Made make(Setup setup, RuleBase rules, Occasion occasion) {
    Evidence evidence = watch.stage(Watch.Stage.MECHANICS, () -> mechanics.apply(setup));
    RuleTrace trace = watch.stage(Watch.Stage.RULES, () -> rules.evaluate(evidence));
    return watch.stage(Watch.Stage.ADVICE, () -> advised(setup, evidence, trace, occasion));
  }

  private static Made advised(Setup setup, Evidence evidence, RuleTrace trace, Occasion occasion) {
    Advice advice = Adviser.advise(evidence, trace, setup.units());
    EvidenceAccount numbers = EvidenceAccount.of(evidence);
    CanonicalJson traced = PlainJson.canonical(TraceAccount.of(trace));
    List<AnsweredFinding> findings =
        advice.findings().stream().map(f -> answered(f, traced, occasion)).toList();
    return new Made(
        kept(setup),
        PlainJson.canonical(numbers),
        traced,
        PlainJson.canonical(Answer.of(occasion, setup, advice, findings)),
        new Judged(advice.verdict(), (double) advice.score()),
        advice.findings().stream()
            .map(f -> new RecordedFinding(f.card(), f.severity(), f.kind()))
            .toList(),
        EvidenceInShort.of(numbers));
  }

  /** A set-up as records keep it, after names were resolved. */
  static CanonicalJson kept(Setup setup) {
    return CanonicalJson.told(out -> CanonicalText.write(setup, out));
  }

  private static AnsweredFinding answered(Finding finding, CanonicalJson trace, Occasion occasion) {
    return new AnsweredFinding(finding, acceptances(finding.card(), trace, occasion));
  }

  private static @Nullable List<ShownAcceptance> acceptances(
      String card, CanonicalJson trace, Occasion occasion) {
    List<ShownAcceptance> shown =
        occasion.acceptances().stream()
            .filter(a -> a.card().equals(card))
            .flatMap(
                a ->
                    SaidThen.line(trace, card)
                        .map(now -> ShownAcceptance.of(a, null, now, occasion.time()))
                        .stream())
            .toList();
    return shown.isEmpty() ? null : shown;
  }
}
