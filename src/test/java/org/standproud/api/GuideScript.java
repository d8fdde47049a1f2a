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

/**
 * The blocks of a guide as one script: a block in bash runs, in its order, and a block with {@code
 * file=} in its heading is written to that file instead.
 */
final class GuideScript {

  private static final Pattern BLOCK =
      Pattern.compile("(?ms)^```([\\w-]+)(?: file=(\\S+))?\\n(.*?)^```$");

  private final Path folder;
  private final List<String> script = new ArrayList<>(List.of("set -euo pipefail"));
  private final List<String> others = new ArrayList<>();

  /**
   * Reads a guide and writes its files.
   *
   * @param guide the guide
   * @param folder where its files go and its blocks run
   * @throws IOException if the guide cannot be read or a file not written
   */
  GuideScript(Path guide, Path folder) throws IOException {
    this.folder = folder;
    Matcher block = BLOCK.matcher(Files.readString(guide));
    while (block.find()) {
      if (block.group(2) != null) {
        Files.writeString(folder.resolve(block.group(2)), block.group(3));
      } else if (block.group(1).equals("bash")) {
        script.add("echo \"--- block " + script.size() + "\"\n" + block.group(3));
      } else {
        others.add(block.group(1));
      }
    }
  }

  /** How many blocks run. */
  int blocks() {
    return script.size() - 1;
  }

  /** The languages of the blocks that neither run nor are a file. */
  List<String> others() {
    return List.copyOf(others);
  }

  /**
   * Runs every block against a service and holds them to end well.
   *
   * @param port where the service listens on this machine
   */
  void assertRuns(int port) throws IOException, InterruptedException {
    String whole = String.join("\n", script) + "\necho all done\n";
    Path file = Files.writeString(folder.resolve("guide.sh"), whole);
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
