package org.standproud.mechanics;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/**
 * The joint evidence over the evidence by bands, both in processor time of their thread and turn by
 * turn, so that the ratio stands on a machine that does other work: of each the least of many turns
 * counts. Writes the means over the demonstration set-ups and the worst ratio.
 */
final class EvidenceRatios {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final int WARM_TURNS = 12;
  private static final int TURNS = 8;

  /** Joint and by bands, plate met before, then both with a new one; runs a turn of each. */
  private static final int[] RUNS = {6, 30, 3, 15};

  private EvidenceRatios() {}

  /**
   * Measures.
   *
   * @param args the file for the figures
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    List<Setup> setups = setups();
    for (int turn = 0; turn < WARM_TURNS; turn++) {
      for (Setup setup : setups) {
        for (int way = 0; way < RUNS.length; way++) {
          milliseconds(setup, way);
        }
      }
    }
    double[] means = new double[RUNS.length];
    double worstMet = 0;
    double worstNew = 0;
    for (Setup setup : setups) {
      double[] least = least(setup);
      for (int way = 0; way < least.length; way++) {
        means[way] += least[way] / setups.size();
      }
      worstMet = Math.max(worstMet, least[0] / least[1]);
      worstNew = Math.max(worstNew, least[2] / least[3]);
    }
    Files.write(
        Path.of(args[0]),
        List.of(
            "#src/bench/run.sh short ratios",
            "met_joint_ms=" + means[0],
            "met_banded_ms=" + means[1],
            "met_ratio=" + means[0] / means[1],
            "met_worst_ratio=" + worstMet,
            "new_joint_ms=" + means[2],
            "new_banded_ms=" + means[3],
            "new_ratio=" + means[2] / means[3],
            "new_worst_ratio=" + worstNew));
  }

  private static double[] least(Setup setup) {
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    for (int turn = 0; turn < TURNS; turn++) {
      for (int way = 0; way < least.length; way++) {
        least[way] = Math.min(least[way], milliseconds(setup, way));
      }
    }
    return least;
  }

  private static double milliseconds(Setup setup, int way) {
    RememberedPlates met = new RememberedPlates(1);
    if (way == 1) {
      BandedEvidence.of(setup, met);
    }
    long begin = THREADS.getCurrentThreadCpuTime();
    for (int run = 0; run < RUNS[way]; run++) {
      switch (way) {
        case 0 -> EvidenceGathering.jointly(setup);
        case 1 -> BandedEvidence.of(setup, met);
        case 2 -> EvidenceGathering.of(setup, new RememberedPlates(1));
        default -> BandedEvidence.of(setup, new RememberedPlates(1));
      }
    }
    return (THREADS.getCurrentThreadCpuTime() - begin) / 1e6 / RUNS[way];
  }

  private static List<Setup> setups() throws IOException {
    Catalogue catalogue =
        ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    try (Stream<Path> files = Files.list(Path.of("seeds/setups"))) {
      SetupReader reader = new SetupReader(catalogue);
      return files.sorted().map(file -> read(reader, file)).toList();
    }
  }

  private static Setup read(SetupReader reader, Path file) {
    try {
      return ((Reading.Accepted) reader.readJson(Files.readString(file))).setup();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
