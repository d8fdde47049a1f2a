package org.standproud.rules.beside;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.tools.ToolProvider;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.Kind;

/**
 * The conditions of some cards in plain Java, compiled once: the limit of what an engine can reach.
 * Cards that derive judgements come before those that read them.
 */
final class HandWritten {

  private final List<Fact> facts;
  private final Map<String, Integer> judgements = new HashMap<>();
  final List<CompiledCard> order;
  final HandCard[] cards;
  private final int[] judges;
  private final Map<String, Integer> places = new HashMap<>();

  HandWritten(RuleBase base) {
    facts = base.facts().facts();
    order = inOrder(base.cards());
    judges = new int[order.size()];
    StringBuilder source = new StringBuilder("package org.standproud.rules.beside;\n");
    source.append("import org.standproud.rules.language.*;\nimport org.standproud.setup.Band;\n");
    source.append("import org.standproud.rules.language.Condition.Relation;\n");
    for (int i = 0; i < order.size(); i++) {
      CompiledCard card = order.get(i);
      places.put(card.id(), i);
      judges[i] =
          card.card().derives() == null
              ? -1
              : judgements.computeIfAbsent(card.card().derives().text(), j -> judgements.size());
    }
    for (int i = 0; i < order.size(); i++) {
      source.append(CardSource.of("C" + i, order.get(i), judgements));
    }
    cards = compiled(source.toString());
  }

  private static List<CompiledCard> inOrder(List<CompiledCard> cards) {
    Map<String, CompiledCard> deriving = new HashMap<>();
    for (CompiledCard card : cards) {
      if (card.card().derives() != null) {
        deriving.put(card.card().derives().text(), card);
      }
    }
    Map<String, CompiledCard> ordered = new LinkedHashMap<>();
    cards.forEach(card -> add(card, deriving, ordered));
    return List.copyOf(ordered.values());
  }

  private static void add(
      CompiledCard card, Map<String, CompiledCard> deriving, Map<String, CompiledCard> ordered) {
    card.judgements().forEach(j -> add(deriving.get(j), deriving, ordered));
    ordered.putIfAbsent(card.id(), card);
  }

  private HandCard[] compiled(String source) {
    try {
      Path folder = Files.createTempDirectory("written");
      Path file = Files.writeString(folder.resolve("Written.java"), source);
      String path = System.getProperty("java.class.path");
      int failed =
          ToolProvider.getSystemJavaCompiler()
              .run(null, null, null, "-proc:none", "-nowarn", "-cp", path, file.toString());
      if (failed != 0) {
        throw new IllegalStateException("the hand-written cards do not compile: " + file);
      }
      return loaded(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private HandCard[] loaded(Path folder) {
    try (SamePackage loader = new SamePackage(folder)) {
      HandCard[] made = new HandCard[order.size()];
      for (int i = 0; i < made.length; i++) {
        Constructor<?> constructor =
            loader.loadClass("org.standproud.rules.beside.C" + i).getDeclaredConstructor();
        constructor.setAccessible(true);
        made[i] = (HandCard) constructor.newInstance();
      }
      return made;
    } catch (ReflectiveOperationException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Finds the classes, which the compiler put beside their source. */
  private static final class SamePackage extends URLClassLoader {
    private final Path folder;

    SamePackage(Path folder) {
      super(new URL[0], HandWritten.class.getClassLoader());
      this.folder = folder;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      try {
        byte[] code = Files.readAllBytes(folder.resolve(name.replaceAll(".*\\.", "") + ".class"));
        return defineClass(name, code, 0, code.length);
      } catch (IOException e) {
        throw new ClassNotFoundException(name, e);
      }
    }
  }

  /** The set-up laid out. */
  Case laidOut(Evidence evidence) {
    return new Case(facts, evidence, judgements.size());
  }

  /** Truth of one card, its judgement kept for those that read it. */
  Truth judge(int i, Case f) {
    Truth truth = cards[i].truth(f);
    if (judges[i] >= 0) {
      f.judged[judges[i]] = truth;
    }
    return truth;
  }

  /** Traces of all cards in their order. */
  List<HandTrace> traced(Evidence evidence) {
    Case f = laidOut(evidence);
    List<HandTrace> traces = new ArrayList<>(cards.length);
    for (int i = 0; i < cards.length; i++) {
      traces.add(trace(i, f));
    }
    return traces;
  }

  /** Trace of one card, its judgement kept for those that read it. */
  HandTrace trace(int i, Case f) {
    HandTrace trace = cards[i].trace(f);
    if (judges[i] >= 0) {
      f.judged[judges[i]] = trace.truth();
    }
    return trace;
  }

  /** Kinds of all cards in their order. */
  Kind[] kinds(Evidence evidence) {
    Case f = laidOut(evidence);
    Kind[] kinds = new Kind[cards.length];
    for (int i = 0; i < kinds.length; i++) {
      kinds[i] = kind(i, f, judge(i, f));
    }
    return kinds;
  }

  Kind kind(int i, Case f, Truth truth) {
    if (cards[i].applies(f) == Truth.FALSE) {
      return Kind.NOT_APPLICABLE;
    }
    return switch (truth) {
      case TRUE, EITHER -> order.get(i).card().flags() ? Kind.FAIL : Kind.INFORMATIONAL;
      case FALSE -> Kind.PASS;
      case UNKNOWN -> Kind.OPEN;
    };
  }

  /** The gravest override counts, without one the easing that leaves the finding gravest. */
  Map<String, Severity> severities(List<HandTrace> traces) {
    Map<String, Severity> changed = new HashMap<>();
    for (boolean override : new boolean[] {false, true}) {
      Map<String, Severity> by = new HashMap<>();
      for (int i = 0; i < cards.length; i++) {
        var change = order.get(i).card().change();
        if (change != null && change.overrides() == override && acts(i, traces)) {
          by.merge(change.card().text(), change.to(), HandWritten::graver);
        }
      }
      changed.putAll(by);
    }
    return changed;
  }

  private boolean acts(int i, List<HandTrace> traces) {
    var change = order.get(i).card().change();
    int other = places.get(change.card().text());
    Truth truth = traces.get(i).truth();
    boolean lowers = change.to().compareTo(order.get(other).card().severity()) < 0;
    boolean holds = lowers ? truth == Truth.TRUE : truth.mayHold();
    return holds && traces.get(other).truth() != Truth.FALSE;
  }

  private static Severity graver(Severity a, Severity b) {
    return Comparator.<Severity>naturalOrder().compare(a, b) >= 0 ? a : b;
  }
}
