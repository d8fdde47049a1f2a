package org.standproud.command.records;

import java.io.PrintWriter;
import java.util.List;
import org.standproud.audit.chain.CheckChain;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * Commands for auditors and operators. Exit codes: 0 when all is well, 1 when something was found,
 * 2 when it failed.
 */
@Command(
    name = "audit",
    description = "Checks, replays, backs up and restores records.",
    subcommands = {
      CheckChain.class,
      ReplayCommand.class,
      ExportCommand.class,
      BackupCommand.class,
      RestoreCommand.class
    },
    mixinStandardHelpOptions = true)
public final class AuditCommand {

  static final int WELL = 0;
  static final int FOUND = 1;
  static final int NOT_DONE = 2;

  private final Class<?> application;

  private AuditCommand(Class<?> application) {
    this.application = application;
  }

  /** The service whose settings a replay uses. */
  Class<?> application() {
    return application;
  }

  /**
   * Runs a command.
   *
   * @param application the service, for commands that need it
   * @param arguments the arguments after audit
   * @param out prints faults
   * @return the exit code
   */
  public static int run(Class<?> application, List<String> arguments, PrintWriter out) {
    CommandLine line = new CommandLine(new AuditCommand(application));
    line.setOut(out).setErr(out);
    line.setExecutionExceptionHandler(
        (e, command, parsed) -> {
          command.getErr().println("not done: " + e.getMessage());
          return NOT_DONE;
        });
    if (arguments.isEmpty()) {
      line.usage(out);
      return NOT_DONE;
    }
    int code = line.execute(arguments.toArray(String[]::new));
    out.flush();
    return code;
  }
}
