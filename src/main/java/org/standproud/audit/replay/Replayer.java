package org.standproud.audit.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Function;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.RecordPayload;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.replay.Replay.Outcome;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.language.UnitReader;
import tools.jackson.databind.JsonNode;

/**
 * Computes recorded answers again: with the revision that judged them, byte for byte, or with
 * another, to see what changes. Nothing is stored.
 */
public final class Replayer {

  private static final String CATALOGUE = "catalogue";
  private static final String FACTS = "facts";

  private final Engine engine;
  private final Function<String, Optional<KeptRuleBase>> kept;
  private final Function<UUID, Optional<Acceptance>> acceptances;
  private final List<Fact> vocabulary;
  private final UnitReader units;

  /**
   * Creates the replayer.
   *
   * @param engine this program
   * @param kept finds a stored rule base by revision
   * @param acceptances finds an acceptance by id
   * @param vocabulary the vocabulary of this program
   * @param units reads quantities in cards
   */
  public Replayer(
      Engine engine,
      Function<String, Optional<KeptRuleBase>> kept,
      Function<UUID, Optional<Acceptance>> acceptances,
      List<Fact> vocabulary,
      UnitReader units) {
    this.engine = engine;
    this.kept = kept;
    this.acceptances = acceptances;
    this.vocabulary = List.copyOf(vocabulary);
    this.units = units;
  }

  /**
   * Replays an answer with the revision that judged it.
   *
   * @param record the record
   * @return the same answer, what differs, or why it cannot be given
   */
  public Replay replay(AuditRecord record) {
    try {
      AssessmentResult made = make(record, rules(record.versions().ruleBase()));
      return outcome(record, made);
    } catch (NotReplayable e) {
      return new Replay(
          record.id(),
          record.versions().ruleBase(),
          Outcome.NOT_POSSIBLE,
          String.valueOf(e.getMessage()),
          programDiffers(record),
          List.of(),
          List.of());
    }
  }

  /**
   * Judges a recorded set-up with another revision.
   *
   * @param record the record
   * @param rules the rule base
   * @throws NotReplayable if its set-up is withheld, or this program cannot read it
   */
  public Comparison compare(AuditRecord record, RuleBase rules) {
    AssessmentResult made = make(record, rules);
    List<VersionDifference> versions = programDiffers(record);
    CanonicalJson then = inShort(record);
    versions.addAll(vocabularyDiffers(then, made.results()));
    return new Comparison(
        record.id(),
        record.versions().ruleBase(),
        rules.revision().id(),
        record.judged(),
        made.judged(),
        ChangedFinding.between(record.account().answer(), made.answer()),
        versions,
        Difference.between(FACTS, part(then, FACTS), part(made.results(), FACTS)));
  }

  /**
   * A stored rule base.
   *
   * @param revision its revision
   * @throws NotReplayable if it was not stored, or can no longer be built
   */
  public RuleBase rules(String revision) {
    KeptRuleBase ruleBase =
        kept.apply(revision)
            .orElseThrow(
                () -> new NotReplayable("The rule base " + revision + " is not in the archive."));
    try {
      return ruleBase.rebuild(vocabulary, units);
    } catch (RulesUnreadable e) {
      throw new NotReplayable(
          "This program cannot build the rule base "
              + revision
              + " again; its vocabulary or its cards differ: "
              + e.reasons().stream().limit(5).toList());
    }
  }

  private AssessmentResult make(AuditRecord record, RuleBase rules) {
    if (record.account().equals(Mask.NO_ACCOUNT)) {
      throw new NotReplayable("The set-up of this record is withheld.");
    }
    try {
      AssessmentContext occasion =
          new AssessmentContext(
              record.id(), record.time(), record.versions(), shown(record.account().answer()));
      return engine.make(record.account().setup(), rules, occasion);
    } catch (IllegalArgumentException e) {
      throw new NotReplayable("This program cannot read the recorded set-up: " + e.getMessage());
    }
  }

  /** The acceptances shown with the findings are part of the answer. */
  private List<Acceptance> shown(CanonicalJson answer) {
    List<Acceptance> found = new ArrayList<>();
    for (JsonNode finding : answer.tree().path("findings")) {
      for (JsonNode shown : finding.path("acceptances")) {
        UUID id = UUID.fromString(shown.path("id").asString());
        found.add(
            acceptances
                .apply(id)
                .filter(given -> !given.said().equals(Mask.NO_ACCOUNT.answer()))
                .orElseThrow(
                    () -> new NotReplayable("The acceptance " + id + " is withheld or gone.")));
      }
    }
    return found;
  }

  private Replay outcome(AuditRecord record, AssessmentResult made) {
    RecordPayload then = record.account();
    List<Difference> differences = new ArrayList<>();
    differences.addAll(Difference.between("setup", then.setup(), made.setup()));
    CanonicalJson results = inShort(record);
    for (String part : List.of(FACTS, "cards", "judgements")) {
      differences.addAll(Difference.between(part, part(results, part), part(made.results(), part)));
    }
    differences.addAll(answerDiffers(then.answer(), made.answer()));
    List<VersionDifference> versions = programDiffers(record);
    versions.addAll(vocabularyDiffers(results, made.results()));
    boolean same = differences.isEmpty();
    return new Replay(
        record.id(),
        record.versions().ruleBase(),
        same ? Outcome.REPRODUCED : Outcome.DIFFERS,
        same ? "The same answer, byte for byte." : explained(differences.get(0), versions),
        versions,
        differences,
        catalogueToday(record));
  }

  /** Names and reasons withheld since, on either side, are no difference. */
  private static List<Difference> answerDiffers(CanonicalJson then, CanonicalJson made) {
    boolean masked = namesWithheld(then) || namesWithheld(made);
    return masked
        ? Difference.between("answer", Mask.withoutPeople(then), Mask.withoutPeople(made))
        : Difference.between("answer", then, made);
  }

  private static boolean namesWithheld(CanonicalJson answer) {
    for (JsonNode finding : answer.tree().path("findings")) {
      for (JsonNode shown : finding.path("acceptances")) {
        if (Mask.WITHHELD.equals(shown.at("/by/name").asString(""))) {
          return true;
        }
      }
    }
    return false;
  }

  private static String explained(Difference first, List<VersionDifference> versions) {
    String where = "It differs first in the " + first.part() + " at " + first.pointer() + "; ";
    String why =
        versions.stream()
            // The replay uses the recorded set-up, not today's catalogue.
            .filter(v -> !v.of().equals(CATALOGUE))
            .map(v -> v.of() + " was " + v.recorded() + ", is " + v.now())
            .reduce((a, b) -> a + "; " + b)
            .orElse(
                "every version is the same, so one of the programs is not what its version says");
    return where + why + ".";
  }

  private List<VersionDifference> programDiffers(AuditRecord record) {
    List<VersionDifference> versions = new ArrayList<>();
    add(versions, "engine", record.versions().engine(), engine.version());
    add(versions, CATALOGUE, record.versions().catalogue(), engine.catalogue());
    return versions;
  }

  private static void add(List<VersionDifference> versions, String of, String was, String is) {
    if (!was.equals(is)) {
      versions.add(new VersionDifference(of, was, is));
    }
  }

  private static List<VersionDifference> vocabularyDiffers(CanonicalJson was, CanonicalJson is) {
    Set<String> then = new TreeSet<>(was.tree().path(FACTS).propertyNames());
    Set<String> now = new TreeSet<>(is.tree().path(FACTS).propertyNames());
    List<VersionDifference> versions = new ArrayList<>();
    then.stream()
        .filter(fact -> !now.contains(fact))
        .forEach(fact -> versions.add(new VersionDifference("vocabulary", fact, "no " + fact)));
    now.stream()
        .filter(fact -> !then.contains(fact))
        .forEach(fact -> versions.add(new VersionDifference("vocabulary", "no " + fact, fact)));
    return versions;
  }

  private CanonicalJson inShort(AuditRecord record) {
    return engine.inShort(record.account().results());
  }

  private static CanonicalJson part(CanonicalJson results, String part) {
    return CanonicalJson.of(results.tree().path(part));
  }

  private List<Difference> catalogueToday(AuditRecord record) {
    if (record.versions().catalogue().equals(engine.catalogue())) {
      return List.of();
    }
    return engine
        .resolve(record.account().request())
        .map(today -> Difference.between("setup", record.account().setup(), today))
        .orElseGet(
            () -> List.of(new Difference("setup", "", record.account().setup().text(), null)));
  }
}
