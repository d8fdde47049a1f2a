package org.standproud.api.shop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;

/**
 * The folder of rule cards, and the rule base in service that was read from it. A folder that the
 * gate refuses changes nothing.
 */
public final class RuleShelf {

  private static final int DEPTH = 3;

  private final Path folder;
  private final Gate gate;
  private final ActiveRuleBase active = new ActiveRuleBase();
  private volatile List<CardError> faults = List.of();

  /**
   * A shelf from which nothing was read yet.
   *
   * @param folder the folder
   * @param gate what the cards have to pass
   */
  public RuleShelf(Path folder, Gate gate) {
    this.folder = folder;
    this.gate = gate;
  }

  /**
   * Takes the folder through the gate; what passes serves from now on. Cards that say the same as
   * those in service leave the revision as it is.
   *
   * @return what the gate decided
   */
  public synchronized GateResult load() {
    GateResult result = check();
    if (result instanceof GateResult.Published published) {
      faults = List.of();
      if (!saysTheSame(published.ruleBase())) {
        active.accept(result);
      }
    } else {
      faults = ((GateResult.Rejected) result).errors();
    }
    return result;
  }

  /** The rule base in service, if there is one. */
  public Optional<RuleBase> ruleBase() {
    return active.get();
  }

  /** What was wrong with the folder when it was last read; empty if nothing. */
  public List<CardError> faults() {
    return faults;
  }

  private boolean saysTheSame(RuleBase next) {
    String content = next.revision().contentHash();
    return ruleBase().map(now -> now.revision().contentHash().equals(content)).orElse(false);
  }

  private GateResult check() {
    try {
      return gate.check(folder, authorship());
    } catch (IOException | UncheckedIOException e) {
      String name = folder.getFileName().toString();
      String message = "the folder of rule cards cannot be read";
      return new GateResult.Rejected(List.of(new CardError(name, 1, 1, "", message, null, null)));
    }
  }

  /**
   * Dates the cards by the newest file and names no parent, for a folder does not remember what it
   * held before: the same folder has the same revision on every start and on every replica.
   */
  private Authorship authorship() throws IOException {
    try (Stream<Path> files = Files.walk(folder, DEPTH)) {
      Instant newest =
          files
              .filter(Files::isRegularFile)
              .map(RuleShelf::changed)
              .max(Comparator.naturalOrder())
              .orElse(Instant.EPOCH);
      return new Authorship("rules folder", "the cards as they stand in the folder", newest, null);
    }
  }

  private static Instant changed(Path file) {
    try {
      return Files.getLastModifiedTime(file).toInstant();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
