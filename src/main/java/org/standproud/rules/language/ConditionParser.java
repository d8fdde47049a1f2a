package org.standproud.rules.language;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.kie.dmn.api.feel.runtime.events.FEELEvent;
import org.kie.dmn.feel.lang.Type;
import org.kie.dmn.feel.lang.ast.BaseNode;
import org.kie.dmn.feel.lang.impl.FEELEventListenersManager;
import org.kie.dmn.feel.lang.types.BuiltInType;
import org.kie.dmn.feel.parser.feel11.ASTBuilderVisitor;
import org.kie.dmn.feel.parser.feel11.FEELParser;
import org.kie.dmn.feel.parser.feel11.FEEL_1_1Parser;
import org.kie.dmn.feel.runtime.events.UnknownVariableErrorEvent;
import org.standproud.mechanics.evidence.Fact;

/**
 * Parses a condition: a closed subset of FEEL (OMG DMN) over the published facts, the limits of the
 * card and the judgements of other cards. The text is scanned, parsed, checked against a list of
 * allowed constructs and for dimension, and compiled to a {@link Condition}. It is never executed
 * as FEEL. {@code some … satisfies} and {@code every … satisfies} range over a list fact, such as
 * the depths of the planned passes, or over a list written in the condition: {@code some push in
 * [plus x push, minus x push] satisfies push > small}.
 */
public final class ConditionParser {

  private final FactTable facts;
  private final Set<String> judgements;

  /**
   * Creates a parser for one catalogue.
   *
   * @param facts the vocabulary
   * @param judgements the judgements of the catalogue
   */
  public ConditionParser(FactTable facts, Set<String> judgements) {
    this.facts = facts;
    this.judgements = Set.copyOf(judgements);
  }

  /**
   * Parses one condition.
   *
   * @param text the condition
   * @param limits the limits of the card by name
   * @throws ConditionRefused if it is invalid, its dimensions do not match, or it reads no fact
   */
  public Condition parse(String text, Map<String, Term.Limit> limits) throws ConditionRefused {
    Names names = new Names(facts, judgements, limits);
    ConditionText.Flaw flaw = ConditionText.flaw(text);
    if (flaw != null) {
      throw refused(text, flaw.at(), flaw.fragment(), flaw.reason(), null, names);
    }
    return new FeelConditionCompiler(names, text).whole(tree(text, names));
  }

  /** The facts whose names the language cannot read, such as one that begins with a keyword. */
  public List<String> unreadableNames() {
    List<String> unreadable = new ArrayList<>();
    for (Fact fact : facts.facts()) {
      try {
        Condition condition = parse(fact.name() + " = null", Map.of());
        if (!(condition instanceof Condition.NotKnown read) || !read.fact().equals(fact)) {
          unreadable.add(fact.name());
        }
      } catch (ConditionRefused e) {
        unreadable.add(fact.name());
      }
    }
    return unreadable;
  }

  private static BaseNode tree(String text, Names names) throws ConditionRefused {
    List<FEELEvent> events = new ArrayList<>();
    FEELEventListenersManager listeners = new FEELEventListenersManager();
    listeners.addListener(events::add);
    Map<String, Type> types = new HashMap<>();
    // The parser is slow with many names; those not in the text are left out.
    String close = text.replaceAll("\\s+", "");
    for (String name : names.all()) {
      if (close.contains(name.replace(" ", ""))) {
        types.put(name, BuiltInType.UNKNOWN);
      }
    }
    try {
      FEEL_1_1Parser parser =
          FEELParser.parse(listeners, text, types, Map.of(), List.of(), List.of(), null);
      var unit = parser.compilation_unit();
      BaseNode node =
          events.isEmpty() ? new ASTBuilderVisitor(Map.copyOf(types), null).visit(unit) : null;
      if (node != null) {
        return node;
      }
    } catch (RuntimeException | StackOverflowError e) {
      // The parser throws on some incomplete text; the error is the same.
    }
    throw fromEvents(text, events, names);
  }

  private static ConditionRefused fromEvents(String text, List<FEELEvent> events, Names names) {
    for (FEELEvent event : events) {
      if (event instanceof UnknownVariableErrorEvent) {
        return unknownName(text, event, names);
      }
    }
    if (events.isEmpty()) {
      return refused(text, 0, text, "the condition cannot be read", null, names);
    }
    FEELEvent first = events.get(0);
    int at = index(text, first.getLine(), first.getColumn());
    String rest = text.substring(at);
    if (rest.isBlank()) {
      return refused(text, at, "", "the condition ends too early", null, names);
    }
    String fragment = rest.strip().split("\\s+", 2)[0];
    boolean unit = at > 0 && text.substring(0, at).strip().matches("(?s).*\\d");
    return refused(
        text,
        at,
        fragment,
        unit && Character.isLetter(fragment.charAt(0)) && !Set.of("and", "or").contains(fragment)
            ? "a number with a unit belongs under limits, with a name"
            : "not expected here, or what follows it is incomplete",
        null,
        names);
  }

  private static ConditionRefused unknownName(String text, FEELEvent event, Names names) {
    String name = String.valueOf(event.getOffendingSymbol());
    int at = index(text, event.getLine(), event.getColumn());
    Fact spoken = names.factAllowing(name);
    if (spoken != null) {
      String example = spoken.name() + " = \"" + name + "\"";
      return new ConditionRefused(
          line(text, at), column(text, at), name, "a word stands in double quotes", null, example);
    }
    return refused(
        text,
        at,
        name,
        "no fact, limit or judgement has this name",
        Nearest.of(name, new TreeSet<>(names.all())),
        names);
  }

  /** An error at a character of the text. */
  static ConditionRefused refused(
      String text, int at, String fragment, String reason, @Nullable String nearest, Names names) {
    return new ConditionRefused(
        line(text, at), column(text, at), fragment, reason, nearest, names.example());
  }

  private static int index(String text, int line, int column) {
    int start = 0;
    for (int l = 1; l < line; l++) {
      int end = text.indexOf('\n', start);
      if (end < 0) {
        return text.length();
      }
      start = end + 1;
    }
    return Math.max(0, Math.min(text.length(), start + column));
  }

  private static int line(String text, int at) {
    return 1
        + (int)
            text.substring(0, Math.min(at, text.length())).chars().filter(c -> c == '\n').count();
  }

  private static int column(String text, int at) {
    return at - text.lastIndexOf('\n', at - 1);
  }
}
