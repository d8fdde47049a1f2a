package org.standproud.api.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.standproud.assessment.AssessmentPipeline;
import org.standproud.assessment.CurrentEngine;
import org.standproud.assessment.RecordDetails;
import org.standproud.assessment.acceptance.CardOutcomes;
import org.standproud.audit.Acceptance;
import org.standproud.audit.Asked;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.RecordPayload;
import org.standproud.audit.Results;
import org.standproud.audit.Versions;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.replay.AssessmentContext;
import org.standproud.audit.replay.AssessmentResult;
import org.standproud.audit.replay.KeptRuleBase;
import org.standproud.audit.replay.Replayer;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.JointEvidence;
import org.standproud.rules.card.CardFiles;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.CardCompiler;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.QuantityText;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CanonicalText;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import org.standproud.shop.SeedCatalogue;

/** The demo shop with its records in memory, and whatever program and cards a test gives it. */
final class RecordedShop {

  static final Instant NOON = Instant.parse("2026-11-25T12:00:00.123456Z");
  static final Clock AT_NOON = Clock.fixed(NOON, ZoneOffset.UTC);
  static final Catalogue CATALOGUE = SeedCatalogue.read(Path.of("seeds")).get().orElseThrow();
  static final String VERSION = "0.1.0";

  private final Map<String, KeptRuleBase> archive = new HashMap<>();
  private final Map<UUID, Acceptance> acceptances = new HashMap<>();

  /** The texts of the shop's cards. */
  static Map<String, String> cards() {
    Path folder = Path.of("rules");
    Map<String, String> cards = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        cards.put(folder.relativize(file).toString(), Files.readString(file));
      }
      return cards;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Set-ups of the demo shop by the beginning of their file name. */
  static String seed(String start) {
    return seeds().stream()
        .filter(f -> f.getFileName().toString().startsWith(start))
        .map(RecordedShop::text)
        .findFirst()
        .orElseThrow();
  }

  static List<Path> seeds() {
    try (Stream<Path> files = Files.list(Path.of("seeds/setups"))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Setup setup(String request, Catalogue shelves) {
    Reading reading = new SetupReader(shelves).readJson(request);
    return ((Reading.Accepted) reading).setup();
  }

  /** Publishes cards and keeps them. */
  RuleBase publish(Map<String, String> cards, String note) {
    CardFiles read = CardFiles.read(cards, file -> null);
    FactTable facts = new FactTable(Vocabulary.all());
    CardCompiler.Outcome compiled = CardCompiler.compile(read.cards(), facts, new QuantityText());
    if (!compiled.errors().isEmpty()) {
      throw new IllegalStateException(compiled.errors().toString());
    }
    RuleBase rules =
        new RuleBase(
            compiled.cards(), facts, read.levels(), new Authorship("tool room", note, NOON, null));
    keep(new KeptRuleBase(rules.revision(), cards));
    return rules;
  }

  void keep(KeptRuleBase ruleBase) {
    archive.put(ruleBase.revision().id(), KeptRuleBase.from(ruleBase.text()));
  }

  void keep(Acceptance acceptance) {
    acceptances.put(acceptance.id(), acceptance);
  }

  /** An answer as an older or newer program would have recorded it. */
  AuditRecord record(
      String request, RuleBase rules, String engine, Function<Setup, JointEvidence> mechanics) {
    return record(request, rules, engine, mechanics, List.of(), NOON);
  }

  /** An answer as this program records it. */
  AuditRecord record(String request, RuleBase rules) {
    return record(request, rules, VERSION, Mechanics.THIS, List.of(), NOON);
  }

  AuditRecord record(
      String request,
      RuleBase rules,
      String engine,
      Function<Setup, JointEvidence> mechanics,
      List<Acceptance> accepted,
      Instant time) {
    Setup setup = setup(request, CATALOGUE);
    UUID id = AuditRecord.newId();
    Versions versions = new Versions(rules.revision().id(), CATALOGUE.revision(), engine);
    AssessmentResult made =
        new AssessmentPipeline(mechanics)
            .make(setup, rules, new AssessmentContext(id, time, versions, accepted));
    AuditRecord record =
        new AuditRecord(
            id,
            time,
            new Asked(
                "traveler",
                setup.job().jobOrder(),
                setup.job().workMaster(),
                setup.job().operation(),
                setup.machine().name()),
            made.judged(),
            versions,
            new RecordPayload(
                CanonicalJson.parse(request),
                CanonicalJson.parse(CanonicalText.of(setup)),
                new Results.Short(made.results()),
                made.answer()),
            made.findings());
    return AuditRecord.from(record.body()); // As it comes back from the disk.
  }

  /** Archives the cards under the revision of another shop. */
  void keep(String revision, RuleBase rules) {
    archive.put(
        revision, Objects.requireNonNull(archive.get(rules.revision().id()), "published here"));
  }

  /** The outcomes of cards in records of this program. */
  CardOutcomes outcomes(RuleBase rules) {
    return new RecordDetails(
        new AssessmentPipeline(Mechanics.THIS), revision -> Optional.of(rules), VERSION);
  }

  /** Replays with this program. */
  Replayer replayer() {
    return replayer(VERSION, Mechanics.THIS, CATALOGUE);
  }

  Replayer replayer(String version, Function<Setup, JointEvidence> mechanics, Catalogue shelves) {
    return new Replayer(
        new CurrentEngine(version, new AssessmentPipeline(mechanics), () -> shelves),
        revision -> Optional.ofNullable(archive.get(revision)),
        id -> Optional.ofNullable(acceptances.get(id)),
        Vocabulary.all(),
        new QuantityText());
  }
}
