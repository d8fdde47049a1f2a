package org.standproud.assessment;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Advice;
import org.standproud.advice.Adviser;
import org.standproud.advice.Finding;
import org.standproud.assessment.acceptance.ShownAcceptance;
import org.standproud.audit.Acceptance;
import org.standproud.audit.Judged;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.audit.replay.AssessmentContext;
import org.standproud.audit.replay.AssessmentResult;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.JointEvidence;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Setup;
import org.standproud.setup.request.CanonicalText;

/** Turns a set-up into an answer, the first time and in every replay. */
public final class AssessmentPipeline {

  private final Function<Setup, JointEvidence> mechanics;
  private final AssessmentMetrics watch;

  /**
   * Creates a pipeline without metrics.
   *
   * @param mechanics computes the evidence
   */
  public AssessmentPipeline(Function<Setup, JointEvidence> mechanics) {
    this(mechanics, AssessmentMetrics.NONE);
  }

  /**
   * Creates a pipeline.
   *
   * @param mechanics computes the evidence
   * @param watch observes each stage
   */
  public AssessmentPipeline(Function<Setup, JointEvidence> mechanics, AssessmentMetrics watch) {
    this.mechanics = mechanics;
    this.watch = watch;
  }

  /**
   * Computes an answer.
   *
   * @param setup the set-up
   * @param rules the rule base
   * @param occasion the rest of the answer: id, time, job
   */
  public AssessmentResult make(Setup setup, RuleBase rules, AssessmentContext occasion) {
    JointEvidence joint =
        watch.stage(AssessmentMetrics.Stage.MECHANICS, () -> mechanics.apply(setup));
    RuleTrace trace =
        watch.stage(AssessmentMetrics.Stage.RULES, () -> rules.evaluate(joint.evidence()));
    return watch.stage(
        AssessmentMetrics.Stage.ADVICE, () -> advised(setup, joint, trace, occasion));
  }

  private static AssessmentResult advised(
      Setup setup, JointEvidence joint, RuleTrace trace, AssessmentContext occasion) {
    Evidence evidence = joint.evidence();
    Advice advice = Adviser.advise(evidence, trace, setup.units());
    CanonicalJson resolved = kept(setup);
    StatedChance chance = StatedChance.of(joint);
    List<FindingDocument> findings =
        advice.findings().stream().map(f -> answered(f, trace, occasion)).toList();
    return new AssessmentResult(
        resolved,
        ResultsInShort.of(evidence, trace).text(),
        PlainJson.canonical(AssessmentDocument.of(occasion, setup, advice, chance, findings)),
        new Judged(advice.verdict().words(), (double) advice.score()),
        advice.findings().stream()
            .map(f -> new RecordedFinding(f.card(), f.severity().words(), f.kind().words()))
            .toList(),
        SetupInShort.of(resolved));
  }

  /**
   * Computes evidence and trace word for word.
   *
   * @param setup the set-up
   * @param rules the rule base
   */
  Explained explain(Setup setup, RuleBase rules) {
    Evidence evidence = mechanics.apply(setup).evidence();
    RuleTrace trace = rules.evaluate(evidence);
    return new Explained(
        EvidenceDocument.of(evidence),
        TraceDocument.of(trace),
        ResultsInShort.of(evidence, trace).text());
  }

  /**
   * Evidence and trace word for word.
   *
   * @param evidence every fact
   * @param trace every card
   * @param results the same as a record keeps it
   */
  record Explained(EvidenceDocument evidence, TraceDocument trace, CanonicalJson results) {}

  /** A set-up as recorded, with names resolved. */
  static CanonicalJson kept(Setup setup) {
    return CanonicalJson.written(out -> CanonicalText.write(setup, out));
  }

  private static FindingDocument answered(
      Finding finding, RuleTrace trace, AssessmentContext occasion) {
    return new FindingDocument(finding, acceptances(finding.card(), trace, occasion));
  }

  private static @Nullable List<ShownAcceptance> acceptances(
      String card, RuleTrace trace, AssessmentContext occasion) {
    List<Acceptance> given =
        occasion.acceptances().stream().filter(a -> a.card().equals(card)).toList();
    if (given.isEmpty()) {
      return null;
    }
    CanonicalJson now = PlainJson.canonical(TraceDocument.line(trace.card(card)));
    return given.stream().map(a -> ShownAcceptance.of(a, null, now, occasion.time())).toList();
  }
}
