package org.standproud.web.browser;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Chromium and its driver as they are on this machine. Nothing is ever downloaded.
 *
 * @param browser the program
 * @param driver what speaks to it
 */
record Chromium(Path browser, Path driver) {

  /** In the environment: these tests may not be skipped. */
  static final String REQUIRED = "required";

  private static final List<String> BROWSERS = List.of("chromium", "chromium-browser");
  private static final String DRIVER = "chromedriver";

  /** What to do with the tests. */
  enum Decision {
    RUN,
    SKIP,
    FAIL
  }

  /** Finds both in the folders of a PATH. */
  static Optional<Chromium> on(String path) {
    List<Path> folders =
        Stream.of(path.split(":")).filter(f -> !f.isBlank()).map(Path::of).toList();
    return BROWSERS.stream()
        .flatMap(name -> program(folders, name).stream())
        .findFirst()
        .flatMap(browser -> program(folders, DRIVER).map(d -> new Chromium(browser, d)));
  }

  /**
   * What to do.
   *
   * @param there whether there is a Chromium
   * @param wanted what the environment says of BROWSER_TESTS, empty if nothing
   */
  static Decision decide(boolean there, String wanted) {
    if (there) {
      return Decision.RUN;
    }
    return wanted.equals(REQUIRED) ? Decision.FAIL : Decision.SKIP;
  }

  private static Optional<Path> program(List<Path> folders, String name) {
    return folders.stream().map(f -> f.resolve(name)).filter(Files::isExecutable).findFirst();
  }
}
