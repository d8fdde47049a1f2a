package org.standproud.command.records;

import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.audit.records.Records;
import org.standproud.audit.replay.Comparison;
import org.standproud.audit.replay.Replay;
import org.standproud.audit.replay.Replayer;
import org.standproud.rules.engine.RuleBase;
import org.standproud.shop.RuleBaseHolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Replays recorded answers, with the settings of the service and without its web server. */
@Command(
    name = "replay",
    description = {
      "Replays an answer with the revision that judged it, or judges its set-up with another.",
      "The settings are those of the service, such as STANDPROUD_AUDIT_DIRECTORY. Ends with 0 for",
      "the same answer, 1 for another, 2 when it cannot be replayed."
    },
    mixinStandardHelpOptions = true)
final class ReplayCommand implements Callable<Integer> {

  private static final String TODAY = "today";

  @Spec private @Nullable CommandSpec spec;
  @ParentCommand private @Nullable AuditCommand parent;

  @Parameters(index = "0", paramLabel = "ID", description = "id of the assessment")
  private UUID id = new UUID(0, 0);

  @Option(
      names = "--at",
      paramLabel = "REVISION",
      description = "rule-base revision to judge with; the word today for the one in service")
  private @Nullable String at;

  @Override
  public Integer call() {
    if (parent == null) {
      return AuditCommand.NOT_DONE;
    }
    try (ConfigurableApplicationContext service =
        new SpringApplicationBuilder(parent.application())
            .web(WebApplicationType.NONE)
            // Starts only what a replay needs, no web server.
            .lazyInitialization(true)
            .properties("spring.main.banner-mode=off", "logging.level.root=warn")
            .run("--standproud.rules.folder=never")) {
      AuditRecord record =
          service
              .getBean(Records.class)
              .find(id)
              .orElseThrow(() -> new IllegalArgumentException("no assessment has the id " + id))
              .record();
      Replayer replayer = service.getBean(Replayer.class);
      return at == null
          ? print(replayer.replay(record))
          : print(replayer.compare(record, rules(at, replayer, service)));
    }
  }

  private static RuleBase rules(
      String revision, Replayer replayer, ConfigurableApplicationContext service) {
    return revision.equals(TODAY)
        ? service
            .getBean(RuleBaseHolder.class)
            .ruleBase()
            .orElseThrow(() -> new IllegalStateException("no rule base is in service"))
        : replayer.rules(revision);
  }

  private int print(Replay replay) {
    write(replay);
    return switch (replay.outcome()) {
      case REPRODUCED -> AuditCommand.WELL;
      case DIFFERS -> AuditCommand.FOUND;
      case NOT_POSSIBLE -> AuditCommand.NOT_DONE;
    };
  }

  private int print(Comparison comparison) {
    write(comparison);
    return comparison.same() ? AuditCommand.WELL : AuditCommand.FOUND;
  }

  private void write(Object answer) {
    if (spec != null) {
      spec.commandLine().getOut().println(PlainJson.canonical(answer).text());
    }
  }
}
