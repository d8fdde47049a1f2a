package org.standproud.audit.chain;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Objects;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.json.JsonMapper;

/**
 * Checkpoints outside the database, one JSON object a line, append-only. It protects only as far as
 * it is out of reach: copy it to where the owner of the database cannot write.
 *
 * @param path path of the file; its directory is created if missing
 */
public record CheckpointFile(Path path) {

  private static final JsonMapper MAPPER = JsonMapper.shared();

  /**
   * Appends a checkpoint and forces it to disk.
   *
   * @param checkpoint the statement
   * @throws UncheckedIOException if the file cannot be written
   */
  public void append(Checkpoint checkpoint) {
    byte[] line =
        (CanonicalJson.of(MAPPER.valueToTree(checkpoint)).text() + "\n")
            .getBytes(StandardCharsets.UTF_8);
    try {
      Files.createDirectories(
          Objects.requireNonNull(path.toAbsolutePath().getParent(), "directory"));
      try (FileChannel channel =
          FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
        channel.truncate(endOfLastWholeLine());
        channel.position(channel.size());
        channel.write(ByteBuffer.wrap(line));
        channel.force(true);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("Checkpoint file " + path, e);
    }
  }

  /**
   * Every complete line; a line that a crash cut short is ignored.
   *
   * @return lines from first to last, empty if there is no file yet
   * @throws UncheckedIOException if the file cannot be read
   */
  public List<String> lines() {
    try {
      if (Files.notExists(path)) {
        return List.of();
      }
      String text = Files.readString(path, StandardCharsets.UTF_8);
      return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("Checkpoint file " + path, e);
    }
  }

  private long endOfLastWholeLine() throws IOException {
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
      ByteBuffer one = ByteBuffer.allocate(1);
      for (long end = channel.size(); end > 0; end--) {
        channel.read(one.clear(), end - 1);
        if (one.get(0) == '\n') {
          return end;
        }
      }
      return 0;
    }
  }
}
