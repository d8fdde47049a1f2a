package org.standproud;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.standproud.api.audit.command.AuditCommand;

/** Starts the service, or runs a command where the first argument names one. */
@SpringBootApplication
public class Standproud {

  /**
   * Runs the service until it is stopped.
   *
   * @param args Spring Boot command-line properties; or {@code audit} and its arguments
   */
  public static void main(String[] args) {
    if (args.length > 0 && args[0].equals("audit")) {
      List<String> rest = Arrays.asList(args).subList(1, args.length);
      PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
      System.exit(AuditCommand.run(Standproud.class, rest, out));
    }
    SpringApplication.run(Standproud.class, args);
  }
}
