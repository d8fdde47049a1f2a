package org.standproud.advice.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Advice;
import org.standproud.advice.Adviser;
import org.standproud.advice.Finding;
import org.standproud.advice.Quantity;
import org.standproud.advice.Wording;
import org.standproud.advice.whatif.PassHandling;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.evidence.stage.JointEvidence;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Band;
import org.standproud.setup.JobReference;
import org.standproud.setup.MillingJob;
import org.standproud.setup.Setup;
import org.standproud.setup.SetupBuilder;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CanonicalText;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import org.standproud.setup.units.QuantityKind;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes the passes of a route. Each is written as a request and read back, so that what is judged
 * here is what anyone gets who sends that request.
 */
final class PassWriter {

  private static final SetupReader READER = new SetupReader(Catalogue.EMPTY);

  private final MillingJob job;
  private final RuleBase ruleBase;
  private final Wording wording;
  private final Map<Integer, Evidence> evidence = new HashMap<>();
  private int count;

  PassWriter(MillingJob job, RuleBase ruleBase, Wording wording) {
    this.job = job;
    this.ruleBase = ruleBase;
    this.wording = wording;
  }

  /** Number of passes written so far. */
  int count() {
    return count;
  }

  /** The facts of a written pass. */
  Evidence evidence(int number) {
    Evidence known = evidence.get(number);
    if (known == null) {
      throw new IllegalArgumentException("no pass has the number " + number);
    }
    return known;
  }

  /** Likely time of passes with the time between them, in minutes. */
  double cutMinutes(List<RoutePass> passes) {
    double inCut = passes.stream().mapToDouble(RoutePass::minutes).sum();
    return inCut + (passes.size() - 1) * PassHandling.betweenS(job.machine()).likely() / 60;
  }

  /** Ids of the stops that some facts meet, in the order of the cards. */
  Set<String> stops(Evidence facts) {
    Set<String> stops = new LinkedHashSet<>();
    ruleBase.kinds(facts).findings().stream()
        .filter(finding -> finding.severity() == Severity.STOP)
        .forEach(finding -> stops.add(finding.id()));
    return stops;
  }

  /**
   * The passes of one clamping.
   *
   * @param plan the plan of the face
   * @param operation number of the set-up
   * @param clamping which of the clampings of this face, from 1
   * @param atFirst the piece before the face was begun
   */
  List<RoutePass> write(ClampingPlan plan, int operation, int clamping, Piece atFirst) {
    List<RoutePass> written = new ArrayList<>();
    int clampings = plan.clamping().holding().clampings();
    double goneM = 0;
    for (PassDraft draft : plan.passes()) {
      int part = clampings > 1 ? clamping : draft.part();
      int parts = clampings > 1 ? clampings : draft.parts();
      double doneM = part == parts ? goneM : 0;
      Piece before = doneM > 0 ? atFirst.after(plan.cut().face(), doneM) : atFirst;
      if (clampings == 1 && goneM > 0) {
        before = atFirst.after(plan.cut().face(), goneM);
      }
      Piece after = part == parts ? before.after(plan.cut().face(), draft.takesM()) : before;
      written.add(pass(plan, draft, operation, part, parts, before, after));
      goneM += clampings > 1 || draft.part() == draft.parts() ? draft.takesM() : 0;
    }
    return written;
  }

  private RoutePass pass(
      ClampingPlan plan,
      PassDraft draft,
      int operation,
      int part,
      int parts,
      Piece before,
      Piece after) {
    ObjectNode request =
        CanonicalText.request(numbered(draft.pass().setup(), operation), job.units());
    Setup setup = read(request);
    JointEvidence joint = EvidenceGathering.jointly(setup);
    Evidence facts = joint.evidence();
    Advice advice = Adviser.advise(facts, ruleBase.evaluate(facts), setup.units());
    HoldingChance chance = joint.chance();
    count++;
    evidence.put(count, facts);
    List<Finding> findings = advice.findings();
    return new RoutePass(
        count,
        plan.cut().face().words(),
        draft.stage().words(),
        part,
        parts,
        length("takes", draft.takesM()),
        PieceSize.of(before, wording),
        PieceSize.of(after, wording),
        quantity(facts, Vocabulary.AXIAL_DEPTH),
        quantity(facts, Vocabulary.CUTTER_OFFSET),
        setup.cut().feed().words(),
        facts.get(Vocabulary.MODE) instanceof Value.Text mode ? mode.word() : null,
        quantity(facts, Vocabulary.SPINDLE_SPEED),
        quantity(facts, Vocabulary.FEED_PER_TOOTH),
        quantity(facts, Vocabulary.TABLE_FEED),
        advice.verdict(),
        chance == null ? null : chance.probability(),
        advice.score(),
        advice.summary(),
        findings.stream()
            .filter(finding -> finding.severity() != Severity.NOTE)
            .map(Finding::card)
            .toList(),
        first(findings),
        FirstCentimetre.of(setup, facts, wording),
        facts.get(Vocabulary.PASS_TIME) instanceof Value.Quantity q ? q.band().likely() / 60 : 0,
        request,
        setup);
  }

  private static @Nullable String first(List<Finding> findings) {
    return findings.isEmpty() ? null : findings.get(0).message();
  }

  /** The set-up under the number of its operation: 10, 20, 30. */
  private Setup numbered(Setup setup, int operation) {
    JobReference job = setup.job();
    return SetupBuilder.builder(setup)
        .job(new JobReference(job.jobOrder(), job.workMaster(), String.valueOf(10 * operation)))
        .build();
  }

  private static Setup read(ObjectNode request) {
    if (READER.read(request) instanceof Reading.Accepted accepted) {
      return accepted.setup();
    }
    throw new IllegalStateException(
        "a planned pass is no set-up: " + ((Reading.Refused) READER.read(request)).problems());
  }

  private Quantity quantity(Evidence facts, Fact fact) {
    return wording.quantity(fact, facts.get(fact));
  }

  private Quantity length(String name, double lengthM) {
    return wording.quantity(name, QuantityKind.LENGTH, Band.exactly(lengthM));
  }
}
