package org.standproud.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class LoggedFaultTest {

  private static String printed(Throwable fault) {
    StringWriter text = new StringWriter();
    fault.printStackTrace(new PrintWriter(text));
    return text.toString();
  }

  @Test
  void aMessageCannotBeginALineOfTheLog() {
    Exception fault =
        new IllegalStateException(
            "outer",
            new IllegalArgumentException("x\r\n2026-11-30 INFO all is well\u2028\u001b[2J"));
    String log = printed(LoggedFault.of(fault));
    assertThat(log.lines()).noneMatch(line -> line.startsWith("2026"));
    assertThat(log)
        .contains("IllegalArgumentException: x\\u000d\\u000a2026")
        .contains("\\u2028\\u001b[2J")
        .contains("LoggedFaultTest.aMessageCannotBeginALineOfTheLog");
  }

  @Test
  void aPlainFaultIsLoggedAsItIs() {
    Exception fault = new IllegalStateException("plain", new IllegalStateException());
    assertThat(LoggedFault.of(fault)).isSameAs(fault);
  }
}
