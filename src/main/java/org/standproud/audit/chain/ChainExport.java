package org.standproud.audit.chain;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The chain as a file that can be checked far from the database: NDJSON, one link a line, and as
 * last line a checkpoint, so that a file cut short is seen to be cut.
 */
public final class ChainExport {

  private static final JsonMapper MAPPER = JsonMapper.shared();
  private static final String CLOSING = "checkpoint";

  private ChainExport() {}

  /**
   * One link as a line.
   *
   * @param link the link
   * @return canonical JSON with no line end
   */
  public static String line(Link link) {
    return CanonicalJson.object(
            Map.of(
                "sequence", CanonicalJson.of(MAPPER.valueToTree(link.sequence())),
                "previous", CanonicalJson.of(MAPPER.valueToTree(link.previous())),
                "seal", CanonicalJson.of(MAPPER.valueToTree(link.seal())),
                "body", link.body()))
        .text();
  }

  /**
   * The last line.
   *
   * @param checkpoint states where the chain ended when it was exported
   * @return canonical JSON with no line end
   */
  public static String line(Checkpoint checkpoint) {
    CanonicalJson value = CanonicalJson.of(MAPPER.valueToTree(checkpoint));
    return CanonicalJson.object(Map.of(CLOSING, value)).text();
  }

  /**
   * Checks an exported file.
   *
   * @param export the file
   * @param key the key the chain was sealed with
   * @param outside lines of checkpoint files kept elsewhere; none is allowed, but with none the
   *     file is held only against its own last line
   * @return what was found; unreadable lines are named by line number
   * @throws UncheckedIOException when the file cannot be read
   */
  public static ChainReport verify(Path export, ChainKey key, List<String> outside) {
    ChainVerifier verifier = new ChainVerifier(key);
    holdAll(verifier, outside);
    try {
      List<Checkpoint> closing = closing(export);
      closing.forEach(verifier::hold);
      try (BufferedReader lines = Files.newBufferedReader(export, StandardCharsets.UTF_8)) {
        String line;
        for (long number = 1; (line = lines.readLine()) != null; number++) {
          read(line, number, verifier);
        }
      }
      if (closing.isEmpty()) {
        verifier.fault(
            ChainFault.Kind.TRUNCATED, 0, "The file does not end with its closing checkpoint");
      }
      return verifier.finish();
    } catch (IOException e) {
      throw new UncheckedIOException("Export " + export, e);
    }
  }

  /**
   * Gives checkpoint lines to a check, and reports those that cannot be read.
   *
   * @param verifier the check
   * @param lines lines as {@link CheckpointFile} writes them
   */
  public static void holdAll(ChainVerifier verifier, List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      try {
        verifier.hold(checkpoint(CanonicalJson.parse(lines.get(i)).tree()));
      } catch (NotCanonical | JacksonException e) {
        verifier.unreadable(i + 1L, "Checkpoint line " + (i + 1) + " cannot be read");
      }
    }
  }

  private static List<Checkpoint> closing(Path export) throws IOException {
    String last = "";
    try (BufferedReader lines = Files.newBufferedReader(export, StandardCharsets.UTF_8)) {
      String line;
      while ((line = lines.readLine()) != null) {
        last = line;
      }
    }
    List<Checkpoint> found = new ArrayList<>();
    try {
      JsonNode tree = CanonicalJson.parse(last).tree();
      if (tree.has(CLOSING)) {
        found.add(checkpoint(tree.get(CLOSING)));
      }
    } catch (NotCanonical | JacksonException e) {
      return found; // The line itself is reported when the file is read.
    }
    return found;
  }

  private static void read(String line, long number, ChainVerifier verifier) {
    try {
      JsonNode tree = CanonicalJson.parse(line).tree();
      if (!tree.has(CLOSING)) {
        verifier.next(MAPPER.treeToValue(tree, Link.class));
      }
    } catch (NotCanonical | JacksonException e) {
      verifier.unreadable(number, "Line " + number + " cannot be read as a record");
    }
  }

  private static Checkpoint checkpoint(JsonNode tree) {
    return MAPPER.treeToValue(tree, Checkpoint.class);
  }
}
