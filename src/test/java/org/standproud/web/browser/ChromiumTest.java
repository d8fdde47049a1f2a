package org.standproud.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.web.browser.Chromium.Decision;

/** When the pages are tested in a browser, and when not. */
class ChromiumTest {

  @Test
  void aMachineWithoutABrowserSkipsUnlessTheEnvironmentForbidsIt() {
    assertThat(Chromium.decide(false, "")).isEqualTo(Decision.SKIP);
    assertThat(Chromium.decide(false, Chromium.REQUIRED)).isEqualTo(Decision.FAIL);
    assertThat(Chromium.decide(true, "")).isEqualTo(Decision.RUN);
    assertThat(Chromium.decide(true, Chromium.REQUIRED)).isEqualTo(Decision.RUN);
  }

  @Test
  void aBrowserWithoutItsDriverIsNone(@TempDir Path bin) throws IOException {
    assertThat(Chromium.on(bin + ":")).isEmpty();
    Path browser = program(bin.resolve("chromium"));
    assertThat(Chromium.on(bin.toString())).isEmpty();
    Path driver = program(bin.resolve("chromedriver"));
    assertThat(Chromium.on("/nowhere:" + bin)).contains(new Chromium(browser, driver));
  }

  private static Path program(Path file) throws IOException {
    Files.createFile(file);
    return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }
}
