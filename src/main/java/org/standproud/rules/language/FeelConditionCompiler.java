package org.standproud.rules.language;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.kie.dmn.feel.lang.ast.ASTNode;
import org.kie.dmn.feel.lang.ast.AtLiteralNode;
import org.kie.dmn.feel.lang.ast.BaseNode;
import org.kie.dmn.feel.lang.ast.BetweenNode;
import org.kie.dmn.feel.lang.ast.BooleanNode;
import org.kie.dmn.feel.lang.ast.ContextNode;
import org.kie.dmn.feel.lang.ast.FilterExpressionNode;
import org.kie.dmn.feel.lang.ast.ForExpressionNode;
import org.kie.dmn.feel.lang.ast.FunctionDefNode;
import org.kie.dmn.feel.lang.ast.FunctionInvocationNode;
import org.kie.dmn.feel.lang.ast.IfExpressionNode;
import org.kie.dmn.feel.lang.ast.InNode;
import org.kie.dmn.feel.lang.ast.InfixOpNode;
import org.kie.dmn.feel.lang.ast.InfixOperator;
import org.kie.dmn.feel.lang.ast.InstanceOfNode;
import org.kie.dmn.feel.lang.ast.IterationContextNode;
import org.kie.dmn.feel.lang.ast.ListNode;
import org.kie.dmn.feel.lang.ast.NameRefNode;
import org.kie.dmn.feel.lang.ast.NullNode;
import org.kie.dmn.feel.lang.ast.NumberNode;
import org.kie.dmn.feel.lang.ast.PathExpressionNode;
import org.kie.dmn.feel.lang.ast.QualifiedNameNode;
import org.kie.dmn.feel.lang.ast.QuantifiedExpressionNode;
import org.kie.dmn.feel.lang.ast.RangeNode;
import org.kie.dmn.feel.lang.ast.SignedUnaryNode;
import org.kie.dmn.feel.lang.ast.StringNode;
import org.kie.dmn.feel.lang.ast.UndefinedValueNode;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.language.Condition.Comparison;
import org.standproud.rules.language.Condition.Relation;
import org.standproud.rules.language.Term.Operation;

/**
 * Checks a parsed condition against the list of allowed constructs and compiles it to our own
 * objects.
 */
final class FeelConditionCompiler {

  private static final Set<String> FUNCTIONS = Set.of("not", "min", "max", "abs");

  /** Names of refused constructs for authors. */
  private static final Map<Class<?>, String> REFUSED =
      Map.ofEntries(
          Map.entry(FunctionDefNode.class, "functions cannot be defined"),
          Map.entry(ContextNode.class, "contexts are not part of the language"),
          Map.entry(ForExpressionNode.class, "for is not part of the language"),
          Map.entry(InstanceOfNode.class, "instance of is not part of the language"),
          Map.entry(
              PathExpressionNode.class, "a value has no parts that could be reached by a dot"),
          Map.entry(QualifiedNameNode.class, "a value has no parts that could be reached by a dot"),
          Map.entry(FilterExpressionNode.class, "filters are not part of the language"),
          Map.entry(AtLiteralNode.class, "dates and times are not part of the language"),
          Map.entry(
              QuantifiedExpressionNode.class,
              "some and every are a yes or no, and a number is expected here"),
          Map.entry(ListNode.class, "a list can only follow in"),
          Map.entry(RangeNode.class, "a range can only follow in"),
          Map.entry(NullNode.class, "null can only be compared with a fact by = or !="));

  /** Longest list that some or every may range over. */
  static final int MAX_MEMBERS = 8;

  private final Names names;
  private final String text;
  private final ConditionSize size = new ConditionSize();

  /** The variable of some or every, and its current member. */
  private @Nullable Bound bound;

  /** The meaning of a variable: a member written in the list, or any number of a list fact. */
  private record Bound(String name, @Nullable BaseNode written, Term.@Nullable Member number) {}

  FeelConditionCompiler(Names names, String text) {
    this.names = names;
    this.text = text;
  }

  private record Typed(Term term, Measure measure) {}

  Condition whole(BaseNode node) throws ConditionRefused {
    Condition condition = bounded(node, condition(node));
    boolean[] reads = new boolean[1];
    condition.facts(f -> reads[0] = true);
    condition.judgements(j -> reads[0] = true);
    if (!reads[0]) {
      throw refuse(node, "the condition reads no fact, so it always says the same");
    }
    return condition;
  }

  /** Refuses repetition that would make evaluation take more steps than its text shows. */
  private Condition bounded(BaseNode node, Condition condition) throws ConditionRefused {
    long steps = size.of(condition);
    if (steps > ConditionSize.MOST) {
      throw refuse(
          node,
          "takes "
              + (steps == Long.MAX_VALUE ? "too many" : steps)
              + " steps to evaluate, and at most "
              + ConditionSize.MOST
              + " are allowed: move the inner if into a card that derives a judgement");
    }
    return condition;
  }

  private Condition condition(@Nullable BaseNode written) throws ConditionRefused {
    BaseNode node = meant(written);
    if (node instanceof BooleanNode literal) {
      return new Condition.Fixed(literal.getValue());
    } else if (node instanceof NameRefNode name) {
      return truthOf(name);
    } else if (node instanceof InfixOpNode infix) {
      return infix(infix);
    } else if (node instanceof BetweenNode between) {
      Typed value = term(between.getValue());
      return Condition.all(
          List.of(
              compare(between, value, Relation.AT_LEAST, term(between.getStart())),
              compare(between, value, Relation.AT_MOST, term(between.getEnd()))));
    } else if (node instanceof InNode in) {
      return in(in);
    } else if (node instanceof IfExpressionNode choice) {
      Condition decides = condition(choice.getCondition());
      Condition then = condition(choice.getThenExpression());
      Condition otherwise = condition(choice.getElseExpression());
      return bounded(
          choice,
          Condition.any(
              List.of(
                  Condition.all(List.of(decides, then)),
                  Condition.all(List.of(new Condition.Not(decides), otherwise)))));
    } else if (node instanceof FunctionInvocationNode call) {
      return new Condition.Not(condition(only(call, "not")));
    } else if (node instanceof QuantifiedExpressionNode quantified) {
      return quantified(quantified);
    } else if (node instanceof NumberNode || node instanceof SignedUnaryNode) {
      throw refuse(node, "a number is not a yes or no: compare it with something");
    } else if (node instanceof StringNode) {
      throw refuse(node, "a word is not a yes or no: compare a fact with it");
    }
    throw notAllowed(node);
  }

  /** The list member for the variable; any other node is itself. */
  private @Nullable BaseNode meant(@Nullable BaseNode node) {
    boolean isBound = bound != null && node instanceof NameRefNode name && runs(name);
    return bound != null && isBound && bound.written != null ? bound.written : node;
  }

  private boolean runs(NameRefNode node) {
    return bound != null && name(node).equals(bound.name);
  }

  private Condition quantified(QuantifiedExpressionNode node) throws ConditionRefused {
    if (bound != null || node.getIterationContexts().size() != 1) {
      throw refuse(node, "some and every run over one list", null, quantifiedExample());
    }
    IterationContextNode over = node.getIterationContexts().get(0);
    String name = text(over.getName());
    if (names.all().contains(name)) {
      throw refuse(over, "this name is taken by a fact, limit or judgement");
    }
    Condition.Join join =
        node.getQuantifier() == QuantifiedExpressionNode.Quantifier.SOME
            ? Condition.Join.ANY
            : Condition.Join.ALL;
    Fact fact = listFact(over.getExpression());
    return fact != null && over.getRangeEndExpr() == null
        ? ofList(node, join, name, fact)
        : written(node, join, name, over);
  }

  private @Nullable Fact listFact(@Nullable BaseNode node) {
    Fact fact = node instanceof NameRefNode name ? names.facts().find(name(name)) : null;
    return fact != null && fact.type() instanceof Fact.Numbers ? fact : null;
  }

  private Condition ofList(
      QuantifiedExpressionNode node, Condition.Join join, String name, Fact list)
      throws ConditionRefused {
    if (!reads(node.getExpression(), name)) {
      throw refuse(node, "the part after satisfies does not use " + name);
    }
    int slot = names.facts().slot(list);
    bound = new Bound(name, null, new Term.Member(name, list, slot));
    Condition each = condition(node.getExpression());
    bound = null;
    return new Condition.OfList(join, name, list, slot, each);
  }

  /** A list is written out, so its quantifier is only or, or and, between its members. */
  private Condition written(
      QuantifiedExpressionNode node, Condition.Join join, String name, IterationContextNode over)
      throws ConditionRefused {
    if (!(over.getExpression() instanceof ListNode list)
        || over.getRangeEndExpr() != null
        || list.getElements().isEmpty()
        || list.getElements().size() > MAX_MEMBERS) {
      String reason =
          "some and every run over a fact that is a list, or a list in brackets of at most "
              + MAX_MEMBERS;
      throw refuse(over, reason, null, quantifiedExample());
    }
    if (reads(list, name)) {
      throw refuse(over, "a member of the list cannot be the name that runs over it");
    }
    List<Condition> each = new ArrayList<>();
    for (BaseNode member : list.getElements()) {
      bound = new Bound(name, member, null);
      each.add(condition(node.getExpression()));
      bound = null;
    }
    return new Condition.Joined(join, each);
  }

  private static boolean reads(ASTNode node, String name) {
    return node instanceof NameRefNode ref && text(ref).equals(name)
        || Arrays.stream(node.getChildrenNode())
            .anyMatch(child -> child != null && reads(child, name));
  }

  private String quantifiedExample() {
    List<String> numbers = new ArrayList<>();
    for (Fact fact : names.facts().facts()) {
      if (fact.type() instanceof Fact.Number && numbers.size() < 2) {
        numbers.add(fact.name());
      }
    }
    return "some x in [" + String.join(", ", numbers) + "] satisfies x > 0";
  }

  private Condition truthOf(NameRefNode node) throws ConditionRefused {
    String name = name(node);
    if (listFact(node) != null) {
      throw listNotNumber(node);
    }
    Fact fact = names.facts().find(name);
    if (fact != null && fact.type() instanceof Fact.YesNo) {
      return new Condition.Yes(fact, names.facts().slot(fact));
    }
    if (names.judgements().contains(name)) {
      return new Condition.Judged(name);
    }
    if (fact != null && fact.type() instanceof Fact.Word word) {
      throw refuse(
          node,
          "this fact is a word: compare it with one",
          null,
          name + " = \"" + word.allowed().get(0) + "\"");
    }
    throw refuse(node, "a number is not a yes or no: compare it with something");
  }

  private Condition infix(InfixOpNode node) throws ConditionRefused {
    InfixOperator operator = node.getOperator();
    if (operator == InfixOperator.AND || operator == InfixOperator.OR) {
      List<Condition> parts = new ArrayList<>();
      gather(node, operator, parts);
      return operator == InfixOperator.AND ? Condition.all(parts) : Condition.any(parts);
    }
    Relation relation = relation(operator);
    if (relation == null) {
      throw refuse(node, "a number is not a yes or no: compare it with something");
    }
    BaseNode left = present(meant(node.getLeft()), node);
    BaseNode right = present(meant(node.getRight()), node);
    if (left instanceof NullNode || right instanceof NullNode) {
      return missing(node, relation, left instanceof NullNode ? right : left);
    } else if (left instanceof StringNode || right instanceof StringNode) {
      return word(node, relation, left, right);
    } else if (left instanceof BooleanNode || right instanceof BooleanNode) {
      return truth(node, relation, left, right);
    } else if (isWord(left)) {
      throw wordExpected(left, right);
    } else if (right instanceof RangeNode) {
      throw refuse(right, "write the comparison once");
    }
    return compare(node, term(left), relation, term(right));
  }

  private void gather(BaseNode node, InfixOperator operator, List<Condition> parts)
      throws ConditionRefused {
    if (node instanceof InfixOpNode infix && infix.getOperator() == operator) {
      gather(present(infix.getLeft(), node), operator, parts);
      gather(present(infix.getRight(), node), operator, parts);
    } else {
      parts.add(condition(node));
    }
  }

  private static @Nullable Relation relation(InfixOperator operator) {
    return switch (operator) {
      case LT -> Relation.LESS;
      case LTE -> Relation.AT_MOST;
      case GT -> Relation.MORE;
      case GTE -> Relation.AT_LEAST;
      case EQ -> Relation.EQUAL;
      case NE -> Relation.NOT_EQUAL;
      default -> null;
    };
  }

  private Condition missing(BaseNode node, Relation relation, BaseNode side)
      throws ConditionRefused {
    Fact fact = side instanceof NameRefNode name ? names.facts().find(name(name)) : null;
    if (fact == null) {
      throw refuse(node, "only a fact can be compared with null");
    }
    return equalOrNot(node, relation, new Condition.NotKnown(fact, names.facts().slot(fact)));
  }

  private Condition word(BaseNode node, Relation relation, BaseNode left, BaseNode right)
      throws ConditionRefused {
    BaseNode side = left instanceof StringNode ? right : left;
    Fact fact = wordFact(side);
    StringNode literal = left instanceof StringNode l ? l : (StringNode) right;
    return equalOrNot(node, relation, oneOf(fact, List.of(allowed(fact, literal))));
  }

  private Condition truth(BaseNode node, Relation relation, BaseNode left, BaseNode right)
      throws ConditionRefused {
    BooleanNode literal = left instanceof BooleanNode l ? l : (BooleanNode) right;
    Condition condition = condition(left instanceof BooleanNode ? right : left);
    return equalOrNot(
        node, relation, literal.getValue() ? condition : new Condition.Not(condition));
  }

  private Condition equalOrNot(BaseNode node, Relation relation, Condition equal)
      throws ConditionRefused {
    return switch (relation) {
      case EQUAL -> equal;
      case NOT_EQUAL -> new Condition.Not(equal);
      default -> throw refuse(node, "only = and != compare what is not a number");
    };
  }

  private Condition oneOf(Fact fact, List<String> words) {
    return new Condition.OneOf(fact, names.facts().slot(fact), words);
  }

  private boolean isWord(BaseNode node) {
    Fact fact = node instanceof NameRefNode name ? names.facts().find(name(name)) : null;
    return fact != null && fact.type() instanceof Fact.Word;
  }

  private Fact wordFact(BaseNode node) throws ConditionRefused {
    Fact fact = node instanceof NameRefNode name ? names.facts().find(name(name)) : null;
    if (fact == null || !(fact.type() instanceof Fact.Word)) {
      throw refuse(node, "only a fact that is a word can be compared with a word");
    }
    return fact;
  }

  private ConditionRefused wordExpected(BaseNode fact, BaseNode other) {
    String example = text(fact) + " = \"" + allowedWords(fact).get(0) + "\"";
    return refuse(other, "this fact is compared with a word in double quotes", null, example);
  }

  private List<String> allowedWords(BaseNode node) {
    Fact fact = names.facts().find(text(node));
    return fact != null && fact.type() instanceof Fact.Word word ? word.allowed() : List.of("");
  }

  private String allowed(Fact fact, StringNode literal) throws ConditionRefused {
    List<String> allowed = fact.type() instanceof Fact.Word word ? word.allowed() : List.of();
    String word = literal.getValue();
    if (!allowed.contains(word)) {
      throw refuse(
          literal,
          fact.name() + " is one of: " + String.join(", ", allowed),
          Nearest.of(word, allowed),
          fact.name() + " = \"" + allowed.get(0) + "\"");
    }
    return word;
  }

  private Condition in(InNode node) throws ConditionRefused {
    BaseNode value = present(meant(node.getValue()), node);
    BaseNode list = present(node.getExprs(), node);
    List<BaseNode> members =
        list instanceof ListNode several ? several.getElements() : List.of(list);
    if (!(list instanceof ListNode || list instanceof RangeNode) || members.isEmpty()) {
      throw refuse(list, "in is followed by a range or a list");
    }
    if (isWord(value)) {
      List<String> words = new ArrayList<>();
      for (BaseNode member : members) {
        if (!(meant(member) instanceof StringNode literal)) {
          throw wordExpected(value, member);
        }
        words.add(allowed(wordFact(value), literal));
      }
      return oneOf(wordFact(value), words);
    }
    Typed number = term(value);
    List<Condition> any = new ArrayList<>();
    for (BaseNode member : members) {
      any.add(
          member instanceof RangeNode range
              ? within(range, number)
              : compare(node, number, Relation.EQUAL, term(member)));
    }
    return any.size() == 1 ? any.get(0) : Condition.any(any);
  }

  private Condition within(RangeNode range, Typed number) throws ConditionRefused {
    List<Condition> ends = new ArrayList<>();
    if (!(range.getStart() instanceof UndefinedValueNode)) {
      boolean open = range.getLowerBound() == RangeNode.IntervalBoundary.OPEN;
      ends.add(
          compare(range, number, open ? Relation.MORE : Relation.AT_LEAST, term(range.getStart())));
    }
    if (!(range.getEnd() instanceof UndefinedValueNode)) {
      boolean open = range.getUpperBound() == RangeNode.IntervalBoundary.OPEN;
      ends.add(
          compare(range, number, open ? Relation.LESS : Relation.AT_MOST, term(range.getEnd())));
    }
    return ends.size() == 1 ? ends.get(0) : Condition.all(ends);
  }

  private Condition compare(BaseNode node, Typed left, Relation relation, Typed right)
      throws ConditionRefused {
    if (!left.measure.fits(right.measure)) {
      throw refuse(
          node,
          left.measure.words()
              + " cannot be compared with "
              + right.measure.words()
              + "; give the limit its unit under limits");
    }
    return new Comparison(
        left.term, relation, right.term, left.measure.or(right.measure).dimension());
  }

  private Typed term(@Nullable BaseNode written) throws ConditionRefused {
    BaseNode node = meant(written);
    if (node instanceof NumberNode number) {
      return literal(number);
    } else if (node instanceof NameRefNode name) {
      return named(name);
    } else if (node instanceof SignedUnaryNode sign) {
      Typed inner = term(sign.getExpression());
      return sign.getSign() == SignedUnaryNode.Sign.NEGATIVE
          ? new Typed(new Term.Opposite(inner.term), inner.measure)
          : inner;
    } else if (node instanceof InfixOpNode infix) {
      return arithmetic(infix);
    } else if (node instanceof FunctionInvocationNode call) {
      return function(call);
    } else if (node instanceof IfExpressionNode choice) {
      Condition decides = condition(choice.getCondition());
      Typed then = term(choice.getThenExpression());
      Typed otherwise = fitting(choice, then, term(choice.getElseExpression()), "chosen beside");
      return new Typed(
          new Term.Chosen(decides, then.term, otherwise.term), then.measure.or(otherwise.measure));
    } else if (node instanceof StringNode || node instanceof BooleanNode) {
      throw refuse(node, "a number is expected here");
    }
    throw notAllowed(node);
  }

  private Typed literal(NumberNode node) throws ConditionRefused {
    double value = node.getValue().doubleValue();
    if (!Double.isFinite(value)) {
      throw refuse(node, "the number is too large");
    }
    return new Typed(
        new Term.Literal(value, text(node)), value == 0 ? Measure.ANY : Measure.NUMBER);
  }

  private ConditionRefused listNotNumber(NameRefNode node) {
    String example = "some x in " + name(node) + " satisfies x > 0";
    return refuse(node, "this fact is a list: use some or every over it", null, example);
  }

  private Typed named(NameRefNode node) throws ConditionRefused {
    String name = name(node);
    if (bound != null && bound.number != null && runs(node)) {
      Fact.Numbers list = (Fact.Numbers) bound.number.list().type();
      return new Typed(bound.number, Measure.of(list.each().dimension()));
    } else if (listFact(node) != null) {
      throw listNotNumber(node);
    }
    Term.Limit limit = names.limits().get(name);
    if (limit != null) {
      return new Typed(limit, Measure.of(limit.quantity().dimension()));
    }
    Fact fact = names.facts().find(name);
    if (fact != null && fact.type() instanceof Fact.Number number) {
      return new Typed(
          new Term.Measured(fact, names.facts().slot(fact)), Measure.of(number.dimension()));
    }
    throw refuse(
        node,
        fact != null && fact.type() instanceof Fact.Word
            ? "this fact is a word, and a number is expected here"
            : "this is a yes or no, and a number is expected here");
  }

  private Typed arithmetic(InfixOpNode node) throws ConditionRefused {
    Operation operation =
        switch (node.getOperator()) {
          case ADD -> Operation.PLUS;
          case SUB -> Operation.MINUS;
          case MULT -> Operation.TIMES;
          case DIV -> Operation.PER;
          case POW -> throw refuse(node, "powers are not part of the language");
          default ->
              throw refuse(
                  node,
                  "a comparison is not a number; for a number between two others write in [a..b]");
        };
    Typed left = term(node.getLeft());
    Typed right = term(node.getRight());
    Measure measure =
        switch (operation) {
          case TIMES -> left.measure.times(right.measure);
          case PER -> left.measure.per(right.measure);
          case PLUS, MINUS -> left.measure.or(fitting(node, left, right, "added to").measure);
        };
    if (operation == Operation.PER
        && right.term instanceof Term.Literal divisor
        && divisor.value() == 0) {
      throw refuse(node, "division by zero");
    }
    return new Typed(new Term.Arithmetic(left.term, operation, right.term), measure);
  }

  private Typed fitting(BaseNode node, Typed left, Typed right, String how)
      throws ConditionRefused {
    if (!left.measure.fits(right.measure)) {
      throw refuse(node, right.measure.words() + " cannot be " + how + " " + left.measure.words());
    }
    return right;
  }

  private Typed function(FunctionInvocationNode call) throws ConditionRefused {
    String function = functionName(call);
    if (function.equals("not")) {
      throw refuse(call, "this is a yes or no, and a number is expected here");
    }
    if (function.equals("abs")) {
      Typed inner = term(only(call, "abs"));
      return new Typed(new Term.Magnitude(inner.term), inner.measure);
    }
    List<BaseNode> arguments = call.getParams().getElements();
    if (arguments.size() == 1 && arguments.get(0) instanceof ListNode list) {
      arguments = list.getElements();
    }
    if (arguments.isEmpty()) {
      throw refuse(call, function + " needs at least one number");
    }
    List<Term> terms = new ArrayList<>();
    Typed first = term(arguments.get(0));
    Measure measure = first.measure;
    terms.add(first.term);
    for (BaseNode argument : arguments.subList(1, arguments.size())) {
      Typed next = fitting(call, new Typed(first.term, measure), term(argument), "held beside");
      measure = measure.or(next.measure);
      terms.add(next.term);
    }
    return new Typed(new Term.Extreme(function.equals("max"), terms), measure);
  }

  private BaseNode only(FunctionInvocationNode call, String expected) throws ConditionRefused {
    String function = functionName(call);
    if (!function.equals(expected)) {
      throw refuse(call, "a number is not a yes or no: compare it with something");
    }
    List<BaseNode> arguments = call.getParams().getElements();
    if (arguments.size() != 1) {
      throw refuse(call, function + " takes one argument");
    }
    return arguments.get(0);
  }

  private String functionName(FunctionInvocationNode call) throws ConditionRefused {
    String function = text(call.getName());
    if (!(call.getName() instanceof NameRefNode) || !FUNCTIONS.contains(function)) {
      throw refuse(
          call,
          "only not, min, max and abs can be called",
          Nearest.of(function, FUNCTIONS),
          names.example());
    }
    return function;
  }

  private BaseNode present(@Nullable BaseNode node, BaseNode parent) throws ConditionRefused {
    if (node == null) {
      throw refuse(parent, "the condition is incomplete");
    }
    return node;
  }

  private String name(NameRefNode node) {
    return text(node);
  }

  private static String text(@Nullable BaseNode node) {
    String written = node == null ? null : node.getText();
    return written == null ? "" : written.strip().replaceAll("\\s+", " ");
  }

  private ConditionRefused notAllowed(@Nullable BaseNode node) {
    return refuse(
        node,
        node == null
            ? "the condition is incomplete"
            : REFUSED.getOrDefault(node.getClass(), "not part of the language"));
  }

  private ConditionRefused refuse(@Nullable BaseNode node, String reason) {
    return refuse(node, reason, null, names.example());
  }

  private ConditionRefused refuse(
      @Nullable BaseNode node, String reason, @Nullable String nearest, String example) {
    return new ConditionRefused(
        node == null ? 1 : Math.max(1, node.getStartLine()),
        node == null ? 1 : node.getStartColumn() + 1,
        node == null ? text : text(node),
        reason,
        nearest,
        example);
  }
}
