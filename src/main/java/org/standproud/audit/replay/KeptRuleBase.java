package org.standproud.audit.replay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.CardFiles;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.CardCompiler;
import org.standproud.rules.engine.Revision;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.UnitReader;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * A stored rule base: who published it and the texts of its cards, from which it can be rebuilt.
 *
 * @param revision its identity
 * @param cards the text of each card by the path of its file
 */
public record KeptRuleBase(Revision revision, Map<String, String> cards) {

  private static final JsonMapper MAPPER = JsonMapper.shared();

  /** Copies the map, sorted by path. */
  public KeptRuleBase {
    cards = Collections.unmodifiableMap(new TreeMap<>(cards));
  }

  /** Its text form. */
  public CanonicalJson text() {
    return CanonicalJson.of(MAPPER.valueToTree(this));
  }

  /**
   * Parses a text.
   *
   * @param text the text from {@link #text()}
   * @throws NotCanonical if it is not a rule base
   */
  public static KeptRuleBase from(CanonicalJson text) {
    try {
      return MAPPER.treeToValue(text.tree(), KeptRuleBase.class);
    } catch (JacksonException e) {
      throw new NotCanonical("not a rule base: " + e.getOriginalMessage());
    }
  }

  /**
   * Rebuilds the rule base.
   *
   * @param vocabulary the vocabulary of this program
   * @param units the unit reader
   * @throws RulesUnreadable if this program cannot read the cards, or gets another rule base from
   *     them than the stored one
   */
  public RuleBase rebuild(List<Fact> vocabulary, UnitReader units) throws RulesUnreadable {
    List<String> reasons = new ArrayList<>();
    CardFiles read = CardFiles.read(cards, file -> null);
    read.errors().forEach(e -> reasons.add(e.toString()));
    FactTable facts = new FactTable(vocabulary);
    CardCompiler.Outcome compiled = CardCompiler.compile(read.cards(), facts, units);
    compiled.errors().forEach(e -> reasons.add(e.toString()));
    if (!reasons.isEmpty()) {
      throw new RulesUnreadable(reasons);
    }
    Authorship by =
        new Authorship(revision.author(), revision.note(), revision.time(), revision.parent());
    RuleBase again = new RuleBase(compiled.cards(), facts, read.levels(), by);
    if (!again.revision().equals(revision)) {
      throw new RulesUnreadable(
          List.of("the cards make revision " + again.revision().id() + " now"));
    }
    return again;
  }
}
