package org.standproud;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.standproud.rules.command.RulesCommand;

/** Starts the service, or works on the rule cards if the first argument is {@code rules}. */
@SpringBootApplication
public class Standproud {

  /**
   * Runs the service until it is stopped, or one command on the cards.
   *
   * @param args Spring Boot command-line properties; or {@code rules} and its command
   */
  public static void main(String[] args) {
    if (args.length > 0 && args[0].equals("rules")) {
      String[] command = Arrays.copyOfRange(args, 1, args.length);
      PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
      PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
      System.exit(RulesCommand.run(out, err, command));
    }
    SpringApplication.run(Standproud.class, args);
  }
}
