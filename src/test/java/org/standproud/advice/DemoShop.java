package org.standproud.advice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.standproud.advice.remedy.Remedies;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.advice.whatif.Trials;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.GateResult;
import org.standproud.rules.language.QuantityText;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/** The demonstration shop with its cards, for tests of advice. */
public final class DemoShop {

  public static final Catalogue CATALOGUE = catalogue();
  public static final RuleBase CARDS = cards();

  private static final Map<String, Remedies> REMEDIES = new ConcurrentHashMap<>();

  private DemoShop() {}

  private static Catalogue catalogue() {
    try {
      return ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static RuleBase cards() {
    Authorship by =
        new Authorship("tool room", "for tests", Instant.parse("2026-11-25T08:00:00Z"), null);
    GateResult result =
        new Gate(
                Vocabulary.all(),
                new QuantityText(),
                name -> Optional.empty(),
                Coverage.Demand.REPORT)
            .check(Path.of("rules"), by);
    return ((GateResult.Published) result).ruleBase();
  }

  /** Names of the demonstration set-ups. */
  public static List<String> names() {
    try (Stream<Path> files = Files.list(Path.of("seeds/setups"))) {
      return files.map(p -> p.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The name of the demonstration set-up that starts so. */
  public static String name(String start) {
    return names().stream().filter(n -> n.startsWith(start)).findFirst().orElseThrow();
  }

  /** The demonstration set-up whose name starts so. */
  public static Setup setup(String start) {
    try {
      Reading reading =
          new SetupReader(CATALOGUE)
              .readJson(Files.readString(Path.of("seeds/setups", name(start))));
      return ((Reading.Accepted) reading).setup();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is advised for a demonstration set-up: a long search, made once in a process. */
  public static Remedies remedies(String name) {
    return REMEDIES.computeIfAbsent(name, each -> Remedies.of(setup(each), CARDS, CATALOGUE));
  }

  /** Trials by the shop's cards. */
  public static Trials trials() {
    return new Trials(CARDS);
  }

  /** A demonstration set-up with grip, depth, feed and stop moved about, within reason. */
  public static Setup perturbed(long seed) {
    Random random = new Random(seed);
    List<String> names = names();
    Setup s = setup(names.get(random.nextInt(names.size())));
    double gripM =
        Math.min(s.hold().gripDepthM() * between(random, 0.7, 1.4), s.hold().vise().jawHeightM());
    double depthM =
        Math.min(s.cut().axialDepthM() * between(random, 0.3, 1.6), s.cutter().greatestDepthM());
    SetupEditor rework =
        SetupEditor.of(s)
            .grip(Math.min(gripM, s.stock().heightM() / 2))
            .depth(depthM)
            .feed(s.cut().feedPerToothM().times(between(random, 0.5, 1.5)));
    if (random.nextBoolean()) {
      rework.stop(Stop.values()[random.nextInt(Stop.values().length)]);
    }
    if (random.nextBoolean() && s.cut().operation() == Operation.TOP_EDGE) {
      rework.reversed();
    }
    return rework.done();
  }

  private static double between(Random random, double least, double greatest) {
    return least + (greatest - least) * random.nextDouble();
  }
}
