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
import java.util.Objects;
import java.util.TreeMap;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The chain as a file to check elsewhere: NDJSON, one link a line, and a checkpoint as last line,
 * which shows a truncated file.
 */
public final class ChainExport {

  private static final JsonMapper MAPPER = JsonMapper.shared();
  private static final String CLOSING = "checkpoint";
  private static final String BESIDE = "beside";

  private ChainExport() {}

  /**
   * One link as a line.
   *
   * @param link the link
   * @return canonical JSON without a line end
   */
  public static String line(Link link) {
    Map<String, CanonicalJson> members = new TreeMap<>();
    members.put("sequence", CanonicalJson.of(MAPPER.valueToTree(link.sequence())));
    members.put("previous", CanonicalJson.of(MAPPER.valueToTree(link.previous())));
    members.put("seal", CanonicalJson.of(MAPPER.valueToTree(link.seal())));
    if (link.body() != null) {
      members.put("body", link.body());
    } else {
      Remainder left = Objects.requireNonNull(link.withheld());
      CanonicalJson digest = CanonicalJson.of(MAPPER.valueToTree(left.digest()));
      members.put("withheld", CanonicalJson.object(Map.of("digest", digest, "text", left.text())));
    }
    return CanonicalJson.object(members).text();
  }

  /**
   * A line that travels with the chain but is not part of it, such as a rule-base revision.
   *
   * @param name its type
   * @param value its content, which must be verifiable by itself
   * @return canonical JSON without a line end
   */
  public static String beside(String name, CanonicalJson value) {
    return CanonicalJson.object(Map.of(BESIDE, CanonicalJson.object(Map.of(name, value)))).text();
  }

  /**
   * The last line.
   *
   * @param checkpoint the end of the chain at the export
   * @return canonical JSON without a line end
   */
  public static String line(Checkpoint checkpoint) {
    CanonicalJson value = CanonicalJson.of(MAPPER.valueToTree(checkpoint));
    return CanonicalJson.object(Map.of(CLOSING, value)).text();
  }

  /**
   * Checks an exported file.
   *
   * @param export the file
   * @param check a new check
   * @param outside lines of checkpoint files kept elsewhere; may be empty, but then the file is
   *     compared only with its own last line
   * @return the report; unreadable lines are named by line number
   * @throws UncheckedIOException if the file cannot be read
   */
  public static ChainReport verify(Path export, ChainCheck check, List<String> outside) {
    holdAll(check, outside);
    try {
      List<Checkpoint> closing = closing(export);
      closing.forEach(check::hold);
      read(
          export,
          new Lines() {
            @Override
            public void link(Link link) {
              check.next(link);
            }

            @Override
            public void unreadable(long number) {
              check.fault(
                  ChainFault.Kind.UNREADABLE,
                  number,
                  "Line " + number + " cannot be read as a record");
            }
          });
      if (closing.isEmpty()) {
        check.fault(
            ChainFault.Kind.TRUNCATED, 0, "The file does not end with its closing checkpoint");
      }
      return check.finish();
    } catch (IOException e) {
      throw new UncheckedIOException("Export " + export, e);
    }
  }

  /** Consumes the lines of an export. */
  public interface Lines {

    /**
     * A record of the chain.
     *
     * @param link the link of the line
     */
    void link(Link link);

    /**
     * A line that is not part of the chain.
     *
     * @param name its type
     * @param value its content
     */
    default void beside(String name, CanonicalJson value) {}

    /**
     * A line that cannot be parsed.
     *
     * @param number its number, from 1
     */
    void unreadable(long number);
  }

  /**
   * Reads an exported file.
   *
   * @param export the file
   * @param lines consumes the lines in order
   * @throws IOException when it cannot be read
   */
  public static void read(Path export, Lines lines) throws IOException {
    try (BufferedReader reader = Files.newBufferedReader(export, StandardCharsets.UTF_8)) {
      String line;
      for (long number = 1; (line = reader.readLine()) != null; number++) {
        read(line, number, lines);
      }
    }
  }

  /**
   * Adds checkpoint lines to a check, and reports unreadable ones.
   *
   * @param check the check
   * @param lines lines in the format of {@link CheckpointFile}
   */
  public static void holdAll(ChainCheck check, List<String> lines) {
    for (int i = 0; i < lines.size(); i++) {
      try {
        check.hold(checkpoint(CanonicalJson.parse(lines.get(i)).tree()));
      } catch (NotCanonical | JacksonException e) {
        check.fault(
            ChainFault.Kind.UNREADABLE, i + 1L, "Checkpoint line " + (i + 1) + " cannot be read");
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

  private static void read(String line, long number, Lines lines) {
    Link link;
    try {
      JsonNode tree = CanonicalJson.parse(line).tree();
      if (tree.has(CLOSING)) {
        return;
      } else if (tree.has(BESIDE)) {
        tree.get(BESIDE).forEachEntry((name, v) -> lines.beside(name, CanonicalJson.of(v)));
        return;
      }
      link = MAPPER.treeToValue(tree, Link.class);
    } catch (NotCanonical | JacksonException e) {
      lines.unreadable(number);
      return;
    }
    lines.link(link);
  }

  private static Checkpoint checkpoint(JsonNode tree) {
    return MAPPER.treeToValue(tree, Checkpoint.class);
  }
}
