package org.standproud.command.rules;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.NewCard;
import org.standproud.rules.card.Protects;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.pages.CardPages;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.PassExplanation;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Works on cards from the command line. Exit codes: 0 if all is well, 1 if a card is refused or an
 * example fails, 2 for wrong usage, 3 if a file cannot be read or written.
 */
@Command(
    name = "rules",
    description = "Works on the rule cards.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "Ends with:%n",
    exitCodeList = {
      "0:all is well",
      "1:a card is refused or an example fails",
      "2:called wrongly",
      "3:a file cannot be read or written"
    })
public final class RulesCommand {

  private static final int REFUSED = 1;
  private static final int NO_FILE = 3;

  @Spec private CommandSpec spec = CommandSpec.create();

  private RulesCommand() {}

  /**
   * Runs a command.
   *
   * @param out prints results
   * @param err prints errors
   * @param arguments the command and its arguments
   * @return the exit code
   */
  public static int run(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = new CommandLine(new RulesCommand());
    line.setOut(out).setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> {
          if (failure instanceof IOException || failure instanceof UncheckedIOException) {
            err.println("cannot be read or written: " + failure.getMessage());
            return NO_FILE;
          }
          throw failure;
        });
    int code = arguments.length == 0 ? usage(line) : line.execute(arguments);
    out.flush();
    err.flush();
    return code;
  }

  private static int usage(CommandLine line) {
    line.usage(line.getErr());
    return CommandLine.ExitCode.USAGE;
  }

  private PrintWriter out() {
    return spec.commandLine().getOut();
  }

  @Command(
      name = "check",
      description = "Takes all cards through the gate.",
      mixinStandardHelpOptions = true)
  int check(
      @Mixin CardsOnDisk cards,
      @Option(names = "--strict", description = "Exits with 1 on warnings too.") boolean strict) {
    Gate.Draft draft = cards.draft(cards.gate());
    print(draft.errors(), draft.warnings());
    RuleBase ruleBase = draft.ruleBase();
    if (ruleBase != null) {
      out()
          .println(
              ruleBase.cards().size() + " cards, content " + ruleBase.revision().contentHash());
    }
    out().println(draft.errors().size() + " errors, " + draft.warnings().size() + " warnings");
    return draft.errors().isEmpty() && !(strict && !draft.warnings().isEmpty()) ? 0 : REFUSED;
  }

  private void print(List<CardError> errors, List<CardWarning> warnings) {
    errors.forEach(e -> out().println("error: " + e));
    warnings.forEach(w -> out().println("warning: " + w));
  }

  @Command(
      name = "test",
      description = "Runs the examples of all cards or of one.",
      mixinStandardHelpOptions = true)
  int test(
      @Mixin CardsOnDisk cards,
      @Parameters(arity = "0..1", paramLabel = "CARD", description = "Id of the card.")
          @Nullable String id) {
    Gate gate = cards.gate();
    Gate.Draft draft = cards.draft(gate);
    RuleBase ruleBase = draft.ruleBase();
    if (ruleBase == null) {
      print(draft.errors(), draft.warnings());
      return REFUSED;
    }
    List<CompiledCard> asked = cards(ruleBase, id);
    List<Gate.Ran> ran = asked.stream().flatMap(c -> gate.run(ruleBase, c).stream()).toList();
    List<CardError> failed = ran.stream().flatMap(r -> r.errors().stream()).toList();
    print(failed, List.of());
    out()
        .println(
            ran.size() + " examples of " + asked.size() + " cards, " + failed.size() + " fail");
    return failed.isEmpty() ? 0 : REFUSED;
  }

  private List<CompiledCard> cards(RuleBase ruleBase, @Nullable String id) {
    if (id == null) {
      return ruleBase.cards();
    }
    return Stream.of(id)
        .filter(i -> ruleBase.cards().stream().anyMatch(c -> c.id().equals(i)))
        .map(ruleBase::card)
        .findFirst()
        .map(List::of)
        .orElseThrow(() -> wrong("there is no card " + id));
  }

  private CommandLine.ParameterException wrong(String message) {
    return new CommandLine.ParameterException(spec.commandLine(), message);
  }

  @Command(
      name = "explain",
      description =
          "Shows the finding of each card, or of one, on a set-up, and why the others passed.",
      mixinStandardHelpOptions = true)
  int explain(
      @Mixin CardsOnDisk cards,
      @Parameters(paramLabel = "SETUP", description = "A set-up in JSON.") Path setup,
      @Parameters(arity = "0..1", paramLabel = "CARD", description = "Id of the card.")
          @Nullable String id)
      throws IOException {
    Gate.Draft draft = cards.draft(cards.gate());
    RuleBase ruleBase = draft.ruleBase();
    if (ruleBase == null) {
      print(draft.errors(), draft.warnings());
      return REFUSED;
    }
    Reading reading = new SetupReader(cards.catalogue()).readJson(Files.readString(setup));
    if (reading instanceof Reading.Refused refused) {
      refused.problems().forEach(p -> out().println("error: " + setup + ": " + p));
      return REFUSED;
    }
    Reading.Accepted accepted = (Reading.Accepted) reading;
    Evidence evidence = EvidenceGathering.of(accepted.setup());
    RuleTrace all = ruleBase.evaluate(evidence);
    for (CompiledCard card : cards(ruleBase, id)) {
      CardTrace trace = all.card(card.id());
      out().println(trace.id() + " " + trace.kind().words() + ": " + trace.card().title());
      trace.conditions().forEach(this::print);
      PassExplanation.of(all, card.id(), accepted.setup().units())
          .ifPresent(w -> out().println("  " + w.words()));
    }
    return 0;
  }

  private void print(ConditionTrace condition) {
    out().println("  " + condition.truth().name() + ": " + condition.words());
    condition.unknown().forEach(u -> out().println("    " + u));
  }

  @Command(
      name = "new",
      description = "Writes a new card that passes the gate, as a start.",
      mixinStandardHelpOptions = true)
  int create(
      @Mixin CardsOnDisk cards,
      @Parameters(paramLabel = "PROTECTS", description = "One of: ${COMPLETION-CANDIDATES}.")
          Protects protects,
      @Parameters(paramLabel = "CARD", description = "Id of the new card, never used before.")
          String id)
      throws IOException {
    if (!id.matches("[A-Za-z][A-Za-z0-9-]{0,59}")) {
      throw wrong("an id is letters, digits and hyphens");
    }
    Path folder = cards.rules().resolve(protects.words());
    Path file = folder.resolve(id + ".yaml");
    if (Files.exists(file)) {
      throw wrong(file + " already exists");
    }
    Files.createDirectories(folder);
    Files.writeString(file, NewCard.text(id), StandardOpenOption.CREATE_NEW);
    out().println(file);
    return 0;
  }

  @Command(
      name = "pages",
      description = "Writes one page a card, and an index.",
      mixinStandardHelpOptions = true)
  int pages(
      @Mixin CardsOnDisk cards,
      @Option(
              names = "--into",
              defaultValue = "api-docs/rules",
              description = "Folder of the pages (default: ${DEFAULT-VALUE}).")
          Path into)
      throws IOException {
    Gate gate = cards.gate();
    Gate.Draft draft = cards.draft(gate);
    RuleBase ruleBase = draft.ruleBase();
    if (ruleBase == null || !draft.errors().isEmpty()) {
      print(draft.errors(), draft.warnings());
      return REFUSED;
    }
    Map<String, String> pages = new CardPages(ruleBase, gate).all();
    Files.createDirectories(into);
    try (Stream<Path> old = Files.list(into)) {
      for (Path path : old.filter(p -> p.toString().endsWith(".md")).toList()) {
        if (!pages.containsKey(into.relativize(path).toString())) {
          Files.delete(path);
        }
      }
    }
    for (Map.Entry<String, String> page : pages.entrySet()) {
      Files.writeString(into.resolve(page.getKey()), page.getValue());
    }
    out().println(pages.size() + " pages in " + into);
    return 0;
  }
}
