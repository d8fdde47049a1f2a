package org.standproud.mechanics.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standproud.mechanics.evidence.Vocabulary.AXIAL_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.CLAMPING_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.COVERS_STOCK;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_JAW;
import static org.standproud.mechanics.evidence.Vocabulary.FIRST_CONTACT_PULLS;
import static org.standproud.mechanics.evidence.Vocabulary.LENGTHWISE_BOTH_WAYS;
import static org.standproud.mechanics.evidence.Vocabulary.LOAD_JAW;
import static org.standproud.mechanics.evidence.Vocabulary.LOW_IMMERSION;
import static org.standproud.mechanics.evidence.Vocabulary.MAY_ROCK;
import static org.standproud.mechanics.evidence.Vocabulary.MODE;
import static org.standproud.mechanics.evidence.Vocabulary.POWER_FEED_FITTED;
import static org.standproud.mechanics.evidence.Vocabulary.SOFTER_MEMBER;
import static org.standproud.mechanics.evidence.Vocabulary.SPEED_AVAILABLE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import org.standproud.setup.units.QuantityKind;

/** Where the value of each fact comes from: a field of the request, or a formula. */
class VocabularyTest {

  private static final Map<String, FieldGuide.Entry> FIELDS =
      FieldGuide.entries(UnitSystem.METRIC).stream()
          .collect(Collectors.toMap(FieldGuide.Entry::path, Function.identity()));

  @Test
  void aStatedFactNamesAFieldOfTheRequest() {
    assertThat(stated()).hasSizeGreaterThan(40);
    for (Fact fact : stated()) {
      assertThat(FIELDS).as(fact.name()).containsKey(pointer(fact));
    }
  }

  @Test
  void aNumberIsStatedInTheUnitsOfItsField() {
    for (Fact fact : stated()) {
      QuantityKind kind = FIELDS.get(pointer(fact)).kind();
      if (fact.type() instanceof Fact.Number number && kind != null) {
        assertThat(number.dimension()).as(fact.name()).isEqualTo(kind.dimension());
      }
    }
  }

  @Test
  void aComputedFactNamesAClassOfTheMechanics() {
    for (Fact fact : Vocabulary.all()) {
      if (fact.origin() instanceof Fact.Computed computed) {
        Class<?> formula = computed.formula();
        boolean arithmetic = formula == Setup.class || formula == PlannedCut.class;
        assertThat(arithmetic || formula.getPackageName().startsWith("org.standproud.mechanics."))
            .as(fact.name() + " by " + formula)
            .isTrue();
        assertThat(formula.getPackageName()).as(fact.name()).doesNotContain("evidence");
        assertThat(fact.formula()).isEqualTo(formula.getSimpleName());
      }
    }
  }

  /** What follows from the cut cannot be in a request, though its type is a word or yes or no. */
  @Test
  void whatTheCutDoesIsComputed() {
    assertThat(
            List.of(
                MODE,
                COVERS_STOCK,
                LENGTHWISE_BOTH_WAYS,
                LOAD_JAW,
                FIRST_CONTACT_PULLS,
                FIRST_CONTACT_JAW,
                MAY_ROCK,
                SOFTER_MEMBER,
                LOW_IMMERSION,
                SPEED_AVAILABLE,
                POWER_FEED_FITTED,
                CLAMPING_FORCE))
        .allSatisfy(fact -> assertThat(fact.origin()).isInstanceOf(Fact.Computed.class));
    assertThat(AXIAL_DEPTH.formula()).isEqualTo("as the request says");
  }

  @Test
  void theEvidenceOfAStatedFactStandsOnItsFieldAlone() throws IOException {
    String request = Files.readString(Path.of("seeds/setups/12-nobody-measured.json"));
    Catalogue seeds =
        ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
    Reading reading = new SetupReader(seeds).readJson(request);
    Evidence evidence = EvidenceGathering.of(((Reading.Accepted) reading).setup());
    for (Fact fact : stated()) {
      assertThat(evidence.detail(fact).inputs())
          .as(fact.name())
          .containsExactly(Optional.ofNullable(fact.field()).orElseThrow());
    }
  }

  private static List<Fact> stated() {
    return Vocabulary.all().stream().filter(fact -> fact.field() != null).toList();
  }

  private static String pointer(Fact fact) {
    return String.valueOf(fact.field());
  }
}
