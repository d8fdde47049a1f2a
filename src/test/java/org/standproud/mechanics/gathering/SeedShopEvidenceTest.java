package org.standproud.mechanics.gathering;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.reading.CatalogueReader;
import org.standproud.setup.reading.CatalogueReading;
import org.standproud.setup.reading.Reading;
import org.standproud.setup.reading.SetupReader;

/** Every demonstration set-up has a value for every fact of the vocabulary. */
class SeedShopEvidenceTest {

  static Stream<Path> setups() throws Exception {
    return Files.list(Path.of("seeds/setups")).sorted();
  }

  @ParameterizedTest
  @MethodSource("setups")
  void everyFactOfTheVocabularyIsGiven(Path file) throws Exception {
    Catalogue catalogue =
        ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    Reading reading = new SetupReader(catalogue).readJson(Files.readString(file));
    Evidence evidence = EvidenceGathering.of(((Reading.Accepted) reading).setup());
    assertThat(evidence.values()).hasSameSizeAs(Vocabulary.all());
    System.out.println("=== " + file);
    evidence.values().forEach(v -> System.out.println(v.fact().name() + " = " + v.value()));
  }
}
