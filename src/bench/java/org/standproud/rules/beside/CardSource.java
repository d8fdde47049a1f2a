package org.standproud.rules.beside;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.Term;

/**
 * Writes one card as a Java class: each condition a method of plain arithmetic on arrays, as a
 * person would who has time and no engine.
 */
final class CardSource {

  private final Map<String, Integer> judgements;
  private final StringBuilder methods = new StringBuilder();
  private int next;

  private CardSource(Map<String, Integer> judgements) {
    this.judgements = judgements;
  }

  static String of(String name, CompiledCard card, Map<String, Integer> judgements) {
    CardSource source = new CardSource(judgements);
    List<Condition> all = new ArrayList<>(card.scope());
    all.addAll(card.when());
    List<Integer> parts = new ArrayList<>();
    all.forEach(condition -> parts.add(source.condition(condition)));
    int scope = card.scope().size();
    StringBuilder text = new StringBuilder("final class " + name + " implements HandCard {\n");
    text.append("public Truth applies(Case f) {").append(both(parts.subList(0, scope))).append('}');
    text.append("\npublic Truth truth(Case f) {").append(both(parts)).append("}\n");
    text.append("public HandTrace trace(Case f) { int n = " + parts.size() + ";\n");
    text.append("Distance[] d = new Distance[n]; Truth[] t = new Truth[n], l = new Truth[n];\n");
    for (int i = 0; i < parts.size(); i++) {
      text.append(traced(i, parts.get(i), all.get(i) instanceof Condition.Comparison));
    }
    text.append("return HandTrace.of(" + scope + ", t, l, d); }\n");
    return text.append(source.methods).append("}\n").toString();
  }

  private static String both(List<Integer> parts) {
    StringBuilder text = new StringBuilder("Truth t = Truth.TRUE;\n");
    for (int part : parts) {
      text.append("t = t.and(c" + part + "(f)); if (t == Truth.FALSE) return t;\n");
    }
    return text.append("return t;").toString();
  }

  private static String traced(int i, int part, boolean comparison) {
    String first =
        comparison
            ? "d[%1$d] = d%2$d(f, true); t[%1$d] = d[%1$d] == null ? Truth.UNKNOWN : d[%1$d].truth();"
            : "t[%1$d] = c%2$d(f); d[%1$d] = t[%1$d] == Truth.UNKNOWN ? null : d%2$d(f, true);";
    String likely =
        " l[%1$d] = t[%1$d] == Truth.TRUE || t[%1$d] == Truth.FALSE ? t[%1$d] : c%2$d(f.atLikely());\n";
    return (first + likely).formatted(i, part);
  }

  /** Writes the methods c and d of a condition and gives their number. */
  private int condition(Condition condition) {
    if (condition instanceof Condition.Comparison c) {
      return comparison(c);
    } else if (condition instanceof Condition.Joined joined) {
      return joined(joined);
    } else if (condition instanceof Condition.Not not) {
      int inner = condition(not.condition());
      return methods("return c" + inner + "(f).not();", "return d" + inner + "(f, !holds);");
    } else if (condition instanceof Condition.OfList list) {
      return list(list);
    }
    return methods("return " + plain(condition) + ";", "return null;");
  }

  private String plain(Condition condition) {
    if (condition instanceof Condition.OneOf one) {
      StringBuilder any = new StringBuilder("false");
      one.words().forEach(w -> any.append(" || \"" + w + "\".equals(f.word[" + one.slot() + "])"));
      return "!f.known[" + one.slot() + "] ? Truth.UNKNOWN : Truth.of(" + any + ")";
    } else if (condition instanceof Condition.Yes yes) {
      return "!f.known[%1$d] ? Truth.UNKNOWN : Truth.of(f.yes[%1$d])".formatted(yes.slot());
    } else if (condition instanceof Condition.NotKnown not) {
      return "Truth.of(!f.known[%1$d] && f.list[%1$d] == null)".formatted(not.slot());
    } else if (condition instanceof Condition.Judged judged) {
      return "f.judged[" + judgements.get(judged.name()) + "]";
    }
    return "Truth.of(" + ((Condition.Fixed) condition).holds() + ")";
  }

  private int comparison(Condition.Comparison c) {
    StringBuilder code = new StringBuilder();
    int a = term(c.left(), code);
    int b = term(c.right(), code);
    code.append("if (!k" + a + " || !k" + b + ") return null;\n");
    code.append("return new Distance(Relation." + c.relation().name() + ", holds, 0, ");
    code.append(band(a) + ", " + band(b) + ");");
    int at = next;
    return methods(
        "Distance d = d" + at + "(f, true); return d == null ? Truth.UNKNOWN : d.truth();",
        code.toString());
  }

  private static String band(int i) {
    return "new Band(l%1$d, m%1$d, h%1$d)".formatted(i);
  }

  private int joined(Condition.Joined joined) {
    List<Integer> parts = joined.conditions().stream().map(this::condition).toList();
    boolean all = joined.join() == Condition.Join.ALL;
    StringBuilder truth = new StringBuilder("Truth t = Truth.of(" + all + ");\n");
    List<String> likely = new ArrayList<>();
    List<String> distances = new ArrayList<>();
    for (int part : parts) {
      truth.append("t = t." + (all ? "and" : "or") + "(c" + part + "(f));\n");
      truth.append("if (t == Truth.of(" + !all + ")) return t;\n");
      likely.add("c" + part + "(f.atLikely())");
      distances.add("d" + part + "(f, holds)");
    }
    String among = "return Distance.among(new Truth[] {%s}, new Distance[] {%s}, holds, %s);";
    return methods(
        truth + "return t;",
        among.formatted(String.join(",", likely), String.join(",", distances), all + " == holds"));
  }

  private int list(Condition.OfList list) {
    int each = condition(list.each());
    boolean all = list.join() == Condition.Join.ALL;
    String loop = "for (Band b : f.list[%1$d]) { f.put(%1$d, b); ".formatted(list.slot());
    String done = " } f.clear(" + list.slot() + ");";
    String truth =
        "if (f.list[%d] == null) return Truth.UNKNOWN; Truth t = Truth.of(%s);\n"
            .formatted(list.slot(), all);
    String distance =
        "if (f.list[%1$d] == null) return null; int n = f.list[%1$d].size(), i = 0;\n"
            + "Truth[] l = new Truth[n]; Distance[] d = new Distance[n];\n";
    String one = "d[i] = d%1$d(f, holds); l[i++] = c%1$d(f.atLikely());".formatted(each);
    return methods(
        truth + loop + "t = t." + (all ? "and" : "or") + "(c" + each + "(f));" + done + "return t;",
        distance.formatted(list.slot())
            + loop
            + one
            + done
            + "return Distance.among(l, d, holds, "
            + all
            + " == holds);");
  }

  private int methods(String truth, String distance) {
    int at = next++;
    methods.append("static Truth c" + at + "(Case f) {\n" + truth + "}\n");
    methods.append("static Distance d" + at + "(Case f, boolean holds) {\n" + distance + "}\n");
    return at;
  }

  /** Adds code that declares k, l, m and h with the number it gives: known, low, likely, high. */
  private int term(Term term, StringBuilder code) {
    if (term instanceof Term.Literal literal) {
      return exact(literal.value(), code);
    } else if (term instanceof Term.Limit limit) {
      return exact(limit.quantity().si(), code);
    } else if (term instanceof Term.Measured measured) {
      return fact(measured.slot(), code);
    } else if (term instanceof Term.Member member) {
      return fact(member.slot(), code);
    } else if (term instanceof Term.Arithmetic arithmetic) {
      return arithmetic(arithmetic, code);
    } else if (term instanceof Term.Opposite opposite) {
      int a = term(opposite.term(), code);
      return declared("k" + a, "-h" + a, "-m" + a, "-l" + a, code);
    } else if (term instanceof Term.Magnitude magnitude) {
      return magnitude(term(magnitude.term(), code), code);
    } else if (term instanceof Term.Extreme extreme) {
      return extreme(extreme, code);
    }
    return chosen((Term.Chosen) term, code);
  }

  private int exact(double value, StringBuilder code) {
    String v = Double.toString(value);
    return declared("true", v, v, v, code);
  }

  private int fact(int slot, StringBuilder code) {
    String at = "[" + slot + "]";
    return declared("f.known" + at, "f.low" + at, "f.likely" + at, "f.high" + at, code);
  }

  private int arithmetic(Term.Arithmetic arithmetic, StringBuilder code) {
    int a = term(arithmetic.left(), code);
    int b = term(arithmetic.right(), code);
    String known = "k" + a + " && k" + b;
    String form =
        switch (arithmetic.operation()) {
          case PLUS -> "l%1$d + l%2$d;m%1$d + m%2$d;h%1$d + h%2$d";
          case MINUS -> "l%1$d - h%2$d;m%1$d - m%2$d;h%1$d - l%2$d";
          case TIMES -> corners("*");
          case PER -> corners("/");
        };
    if (arithmetic.operation() == Term.Operation.PER) {
      known += " && !(l%1$d <= 0 && h%1$d >= 0)".formatted(b);
    }
    String[] parts = form.formatted(a, b).split(";");
    return declared(known, parts[0], parts[1], parts[2], code);
  }

  private static String corners(String sign) {
    String four =
        "(Math.%s(Math.%s(l%%1$d S l%%2$d, l%%1$d S h%%2$d), "
            + "Math.%s(h%%1$d S l%%2$d, h%%1$d S h%%2$d)))";
    String low = four.replace("%s", "min").replace("%%", "%");
    String high = four.replace("%s", "max").replace("%%", "%");
    return (low + ";m%1$d S m%2$d;" + high).replace("S", sign);
  }

  private int magnitude(int a, StringBuilder code) {
    String low = "l%1$d <= 0 && h%1$d >= 0 ? 0 : Math.min(Math.abs(l%1$d), Math.abs(h%1$d))";
    return declared(
        "k" + a,
        low.formatted(a),
        "Math.abs(m" + a + ")",
        "Math.max(Math.abs(l%1$d), Math.abs(h%1$d))".formatted(a),
        code);
  }

  private int extreme(Term.Extreme extreme, StringBuilder code) {
    int first = term(extreme.terms().get(0), code);
    String pick = extreme.greatest() ? "Math.max(%s%d, %s%d)" : "Math.min(%s%d, %s%d)";
    for (Term term : extreme.terms().subList(1, extreme.terms().size())) {
      int b = term(term, code);
      String known = "k" + first + " && k" + b;
      String low = pick.formatted("l", first, "l", b);
      String likely = pick.formatted("m", first, "m", b);
      first = declared(known, low, likely, pick.formatted("h", first, "h", b), code);
    }
    return first;
  }

  private int chosen(Term.Chosen chosen, StringBuilder code) {
    int condition = condition(chosen.condition());
    int a = term(chosen.then(), code);
    int b = term(chosen.otherwise(), code);
    int t = next++;
    code.append("Truth t%d = c%d(f);\n".formatted(t, condition));
    String both = "t%1$d == Truth.TRUE ? %2$s%3$d : t%1$d == Truth.FALSE ? %2$s%4$d : ";
    String known = both + "t%1$d == Truth.EITHER && k%3$d && k%4$d";
    String likely = both + "(c" + condition + "(f.atLikely()) == Truth.TRUE ? m%3$d : m%4$d)";
    return declared(
        known.formatted(t, "k", a, b),
        (both + "Math.min(l%3$d, l%4$d)").formatted(t, "l", a, b),
        likely.formatted(t, "m", a, b),
        (both + "Math.max(h%3$d, h%4$d)").formatted(t, "h", a, b),
        code);
  }

  private int declared(String known, String low, String likely, String high, StringBuilder code) {
    int at = next++;
    code.append("double l%1$d = %2$s, h%1$d = %3$s;\n".formatted(at, low, high));
    code.append("double m%1$d = Math.min(h%1$d, Math.max(l%1$d, %2$s));\n".formatted(at, likely));
    code.append("boolean k%1$d = (%2$s) && Double.isFinite(l%1$d) && ".formatted(at, known));
    code.append("Double.isFinite(h%1$d) && !Double.isNaN(m%1$d);\n".formatted(at));
    return at;
  }
}
