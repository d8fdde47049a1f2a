package org.standproud.api.shop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.standproud.audit.replay.KeptRuleBase;
import org.standproud.audit.replay.RulesUnreadable;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.CompiledCard;
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
  private final Keeping keeping;
  private final ActiveRuleBase active = new ActiveRuleBase();
  private volatile List<CardError> faults = List.of();

  /** Keeps rule bases for good. */
  @FunctionalInterface
  public interface Keeping {

    /**
     * Keeps a rule base.
     *
     * @param ruleBase the rule base with the texts of its cards
     * @throws RulesUnreadable when the texts are not those of the rule base
     */
    void keep(KeptRuleBase ruleBase) throws RulesUnreadable;
  }

  /**
   * A shelf from which nothing was read yet.
   *
   * @param folder the folder
   * @param gate what the cards have to pass
   * @param keeping keeps a rule base for good; called before its first answer can be given
   */
  public RuleShelf(Path folder, Gate gate, Keeping keeping) {
    this.folder = folder;
    this.gate = gate;
    this.keeping = keeping;
  }

  /**
   * Takes the folder through the gate; what passes serves from now on. Cards that say the same as
   * those in service leave the revision as it is.
   *
   * @return what the gate decided
   */
  public synchronized GateResult load() {
    GateResult result = check();
    if (result instanceof GateResult.Published published && !saysTheSame(published.ruleBase())) {
      result = kept(published);
      active.accept(result);
    }
    if (result instanceof GateResult.Published) {
      faults = List.of();
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

  /** No answer without the cards it can be given from again. */
  private GateResult kept(GateResult.Published published) {
    Map<String, String> cards = new TreeMap<>();
    try {
      for (CompiledCard card : published.ruleBase().cards()) {
        String file = card.card().file();
        cards.put(file, Files.readString(folder.resolve(file)));
      }
      keeping.keep(new KeptRuleBase(published.ruleBase().revision(), cards));
      return published;
    } catch (IOException | RulesUnreadable e) {
      return refused("the cards changed while they were read; have them read again");
    }
  }

  private GateResult.Rejected refused(String message) {
    String name = folder.getFileName().toString();
    return new GateResult.Rejected(List.of(new CardError(name, 1, 1, "", message, null, null)));
  }

  private boolean saysTheSame(RuleBase next) {
    String content = next.revision().contentHash();
    return ruleBase().map(now -> now.revision().contentHash().equals(content)).orElse(false);
  }

  private GateResult check() {
    try {
      return gate.check(folder, authorship());
    } catch (IOException | UncheckedIOException e) {
      return refused("the folder of rule cards cannot be read");
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
