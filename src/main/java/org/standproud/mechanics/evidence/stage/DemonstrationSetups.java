package org.standproud.mechanics.evidence.stage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/** Set-ups kept as files, from which the examples of cards may start. */
public final class DemonstrationSetups {

  private static final String ENDING = ".json";

  private final Path folder;
  private final SetupReader reader;

  /**
   * The set-ups of a folder.
   *
   * @param folder the folder; may be missing
   * @param catalogue what their names are looked up in
   */
  public DemonstrationSetups(Path folder, Catalogue catalogue) {
    this.folder = folder;
    this.reader = new SetupReader(catalogue);
  }

  /**
   * The evidence for one set-up.
   *
   * @param name name of its file without the ending
   * @return the evidence; empty if there is no such file, or it is no set-up
   * @throws UncheckedIOException if the file is there and cannot be read
   */
  public Optional<Evidence> evidence(String name) {
    return text(name)
        .map(reader::readJson)
        .filter(Reading.Accepted.class::isInstance)
        .map(reading -> EvidenceGathering.of(((Reading.Accepted) reading).setup()));
  }

  /**
   * The names of the set-ups that are there, in order.
   *
   * @throws UncheckedIOException if the folder cannot be listed
   */
  public List<String> names() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(ENDING))
          .map(f -> f.substring(0, f.length() - ENDING.length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * One set-up as it is written. The name is looked up among the files that are there, so that no
   * name leads out of the folder.
   *
   * @param name name of its file without the ending
   * @return its text; empty if there is no such file
   * @throws UncheckedIOException if the file is there and cannot be read
   */
  public Optional<String> text(String name) {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    try (Stream<Path> files = Files.list(folder)) {
      Optional<Path> file =
          files.filter(f -> f.getFileName().toString().equals(name + ENDING)).findFirst();
      return file.isEmpty() ? Optional.empty() : Optional.of(Files.readString(file.get()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
