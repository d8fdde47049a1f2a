package org.standproud.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/** The evidence of the demonstration set-ups, worked out once. */
public final class DemonstrationEvidence {

  private DemonstrationEvidence() {}

  /** One a set-up, in the order of their files. */
  public static List<Evidence> all() {
    try (Stream<Path> setups = Files.list(Path.of("seeds/setups"))) {
      CatalogueReading.Loaded shop =
          (CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"));
      SetupReader reader = new SetupReader(shop.catalogue());
      return setups.sorted().map(path -> evidence(reader, path)).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Evidence evidence(SetupReader reader, Path path) {
    try {
      Reading.Accepted accepted = (Reading.Accepted) reader.readJson(Files.readString(path));
      return EvidenceGathering.of(accepted.setup());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
