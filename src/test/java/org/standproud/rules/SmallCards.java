package org.standproud.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.trace.Kind;

/** Four cards and a gate for tests of what is done with cards. */
public final class SmallCards {

  public static final Path FOLDER = Path.of("src/test/resources/cards");
  public static final String TALL = "holding/tall.yaml";

  private SmallCards() {}

  public static Gate gate() {
    return new Gate(
        Shop.VOCABULARY, Shop.UNIT_READER, name -> Optional.empty(), Coverage.Demand.REFUSE);
  }

  /** The texts of the cards by their paths, without the example that sits on the limit. */
  public static Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    try (var paths = Files.walk(FOLDER)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(FOLDER.relativize(path).toString(), Files.readString(path));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    files.computeIfPresent(
        TALL, (f, text) -> text.replaceFirst("(?s)  - says: just at the limit.*?(?=  - says)", ""));
    return files;
  }

  /** The cards with another limit of what is tall; 1 to 2.6 agrees with the examples. */
  public static Map<String, String> tall(String limit) {
    Map<String, String> files = files();
    files.computeIfPresent(TALL, (f, text) -> text.replace("tall: 2.5", "tall: " + limit));
    return files;
  }

  /** A rule base of some cards. */
  public static RuleBase ruleBase(Map<String, String> files) {
    Authorship by = new Authorship("engineer", "note", Instant.parse("2026-11-25T08:00:00Z"), null);
    if (gate().check(files, by) instanceof GateResult.Published published) {
      return published.ruleBase();
    }
    throw new AssertionError(gate().check(files, by));
  }

  /** A verdict: what stops, what is open, or run. */
  public static final Impact.Verdicts VERDICT =
      (base, kinds, evidence) ->
          kinds.findings().stream()
                  .anyMatch(f -> f.severity() == Severity.STOP && f.kind() == Kind.FAIL)
              ? "do not run"
              : kinds.findings().isEmpty() ? "run" : "not judged";
}
