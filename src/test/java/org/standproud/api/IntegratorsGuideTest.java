package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything that the integrator's guide shows works as it stands there. */
class IntegratorsGuideTest {

  private static final Path GUIDE = Path.of("api-docs/integrators-guide.md");
  private static final Pattern BLOCK =
      Pattern.compile("(?ms)^```(\\w+)(?: file=(\\S+))?\\n(.*?)^```$");

  private @TempDir Path folder;
  private @TempDir Path audit;

  @Test
  void everyBlockOfTheGuideRunsInItsOrder() throws Exception {
    try (RunningService service =
        RunningService.start(
            audit, Path.of("rules"), "--standproud.events.inside-hosts=127.0.0.1")) {
      List<String> script = new ArrayList<>(List.of("set -euo pipefail"));
      Matcher block = BLOCK.matcher(Files.readString(GUIDE));
      while (block.find()) {
        if (block.group(2) != null) {
          Files.writeString(folder.resolve(block.group(2)), block.group(3));
        } else {
          assertThat(block.group(1)).as("a block that is not a file is run").isEqualTo("bash");
          script.add("echo \"--- block " + script.size() + "\"\n" + block.group(3));
        }
      }
      assertThat(script).as("blocks that run").hasSizeGreaterThan(10);
      assertRuns(String.join("\n", script) + "\necho all done\n", service.caller().port());
    }
  }

  private void assertRuns(String script, int port) throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("guide.sh"), script);
    Path said = folder.resolve("said.txt");
    ProcessBuilder shell = new ProcessBuilder("bash", file.toString());
    shell.directory(folder.toFile()).redirectErrorStream(true).redirectOutput(said.toFile());
    shell.environment().put("BASE", "http://127.0.0.1:" + port);
    shell.environment().put("KEY", "none");
    shell
        .environment()
        .merge(
            "PATH",
            Path.of(System.getProperty("java.home"), "bin").toString(),
            (path, java) -> java + ":" + path);
    Process process = shell.start();
    boolean ended = process.waitFor(10, TimeUnit.MINUTES);
    process.destroyForcibly();
    assertThat(ended).isTrue();
    assertThat(Files.readString(said)).endsWith("all done\n");
    assertThat(process.waitFor()).isZero();
  }
}
