package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueReader;
import org.standproud.setup.request.CatalogueReading;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

class EvidenceGatheringTest {

  private static Catalogue catalogue;

  @BeforeAll
  static void openTheShop() throws IOException {
    catalogue = ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
  }

  static Stream<Path> setups() throws IOException {
    return Files.list(Path.of("seeds/setups")).sorted();
  }

  private static void inRange(Fact fact, Band band) {
    Fact.Number range = Objects.requireNonNull(fact.number());
    assertThat(band.low()).isGreaterThanOrEqualTo(range.least());
    assertThat(band.high()).isLessThanOrEqualTo(range.greatest());
  }

  @ParameterizedTest
  @MethodSource("setups")
  void everyFactOfTheVocabularyIsGivenInItsRange(Path file) throws IOException {
    Evidence evidence = EvidenceGathering.of(read(Files.readString(file)));
    assertThat(evidence.values()).hasSameSizeAs(Vocabulary.all());
    evidence
        .values()
        .forEach(
            value -> {
              if (value.value() instanceof Value.Quantity quantity) {
                inRange(value.fact(), quantity.band());
              } else if (value.value() instanceof Value.Quantities list) {
                list.bands().forEach(band -> inRange(value.fact(), band));
              }
            });
  }

  /**
   * Clockwise from above, fed toward +X: the teeth ahead go toward -Y and drag the stock to the
   * movable jaw; fed the other way they go toward +Y. Worked by hand from the spin.
   */
  @Test
  void reversingTheFeedOfACentredFaceMillSwapsTheJawThatTakesTheLoad() throws IOException {
    String request = Files.readString(Path.of("seeds/setups/08-wire-too-deep.json"));
    assertThat(request).contains("\"feed\": \"+x\"");
    Evidence there = EvidenceGathering.of(read(request));
    Evidence back =
        EvidenceGathering.of(read(request.replace("\"feed\": \"+x\"", "\"feed\": \"-x\"")));
    assertThat(there.get(Vocabulary.LOAD_JAW)).isEqualTo(new Value.Text("movable jaw"));
    assertThat(back.get(Vocabulary.LOAD_JAW)).isEqualTo(new Value.Text("fixed jaw"));
    assertThat(band(back, Vocabulary.PUSH_FIXED).likely())
        .isCloseTo(band(there, Vocabulary.PUSH_MOVABLE).likely(), within(1e-6));
    assertThat(band(back, Vocabulary.PUSH_MINUS_X).likely())
        .isCloseTo(band(there, Vocabulary.PUSH_PLUS_X).likely(), within(1e-6));
  }

  @Test
  void aConventionalSideEntryPullsThePlateTowardTheCutterAndAClimbEntryDoesNot()
      throws IOException {
    String request = Files.readString(Path.of("seeds/setups/05-conventional-side-entry.json"));
    String climb = request.replace("\"conventional\"", "\"climb\"").replace("\"+x\"", "\"-x\"");
    assertThat(pulling(request)).isGreaterThan(0.95);
    assertThat(pulling(climb)).isZero();
  }

  /** Share of the draws in which the first touch pulls the stock toward the cutter. */
  private static double pulling(String request) {
    Value pulls = EvidenceGathering.of(read(request)).get(Vocabulary.FIRST_CONTACT_PULLS);
    return ((Value.Truth) pulls).draws().share();
  }

  /** Milled on the side of a jaw, a force toward that jaw is a pull: the sign of y says which. */
  @Test
  void thePullOfTheFirstBiteHasTheSignOfTheForceTowardTheCutter() throws IOException {
    String request = Files.readString(Path.of("seeds/setups/05-conventional-side-entry.json"));
    String climb = request.replace("\"conventional\"", "\"climb\"").replace("\"+x\"", "\"-x\"");
    Evidence conventional = EvidenceGathering.of(read(request));
    assertThat(band(conventional, Vocabulary.FIRST_CONTACT_PULL).high()).isPositive();
    Evidence climbing = EvidenceGathering.of(read(climb));
    assertThat(band(climbing, Vocabulary.FIRST_CONTACT_PULL).high()).isNotPositive();
    boolean cutterAtFixedJaw = band(climbing, Vocabulary.CUTTER_OFFSET).likely() > 0;
    assertThat(climbing.get(Vocabulary.FIRST_CONTACT_JAW))
        .isEqualTo(new Value.Text(cutterAtFixedJaw ? "movable jaw" : "fixed jaw"));
  }

  @Test
  void theTableFeedUnderPowerIsHeldAgainstTheGreatestOfTheMachine() throws IOException {
    Setup setup = read(Files.readString(Path.of("seeds/setups/02-broad-side-climb-on-cnc.json")));
    Evidence evidence = EvidenceGathering.of(setup);
    double greatest = Objects.requireNonNull(setup.machine().greatestFeedMPerS());
    assertThat(band(evidence, Vocabulary.TABLE_FEED_RATIO).likely())
        .isCloseTo(band(evidence, Vocabulary.TABLE_FEED).likely() / greatest, within(1e-9));
    assertThat(evidence.get(Vocabulary.POWER_FEED_FITTED)).isEqualTo(new Value.Truth(true));
  }

  /** A shop sets the greatest feed there is; twice of it is a slip of the pen. */
  @Test
  void aFeedALittleOverTheGreatestIsJudgedAndTwiceOfItIsAsked() throws IOException {
    Setup setup = read(Files.readString(Path.of("seeds/setups/02-broad-side-climb-on-cnc.json")));
    double now = band(EvidenceGathering.of(setup), Vocabulary.TABLE_FEED_RATIO).likely();
    Evidence over = EvidenceGathering.of(fedBy(setup, 1.1 / now));
    assertThat(band(over, Vocabulary.TABLE_FEED_RATIO).likely()).isCloseTo(1.1, within(1e-9));
    assertThat(over.get(Vocabulary.HOLDING_MARGIN)).isInstanceOf(Value.Quantity.class);
    assertThat(EvidenceGathering.of(fedBy(setup, 2 / now)).get(Vocabulary.HOLDING_MARGIN))
        .isInstanceOf(Value.Missing.class);
  }

  private static Setup fedBy(Setup setup, double factor) {
    return SetupEditor.of(setup).feed(setup.cut().feedPerToothM().times(factor)).done();
  }

  /** The cut pushes as hard whatever holds the stock. */
  @Test
  void aHoldBeyondTheFormulasLeavesTheForcesOfTheCut() throws IOException {
    Setup setup = read(Files.readString(Path.of("seeds/setups/01-top-edge-wire-and-stop.json")));
    Evidence held = EvidenceGathering.of(setup);
    Evidence hardly = EvidenceGathering.of(SetupEditor.of(setup).grip(0.5e-3, List.of()).done());
    assertThat(hardly.get(Vocabulary.HOLDING_MARGIN)).isInstanceOf(Value.Missing.class);
    assertThat(band(hardly, Vocabulary.PUSH_FIXED)).isEqualTo(band(held, Vocabulary.PUSH_FIXED));
    assertThat(band(hardly, Vocabulary.LIFT_FORCE)).isEqualTo(band(held, Vocabulary.LIFT_FORCE));
  }

  @Test
  void aHandFedTableHasNoShareOfThePowerFeed() throws IOException {
    String request = Files.readString(Path.of("seeds/setups/01-top-edge-wire-and-stop.json"));
    Evidence evidence = EvidenceGathering.of(read(request.replace("\"power\"", "\"hand\"")));
    assertThat(evidence.get(Vocabulary.TABLE_FEED_RATIO)).isInstanceOf(Value.Missing.class);
  }

  @Test
  void aHandFeedIsSeenFromHalfToTwiceWhatWasMeantAndSaysSo() throws IOException {
    String request = Files.readString(Path.of("seeds/setups/01-top-edge-wire-and-stop.json"));
    Evidence evidence = EvidenceGathering.of(read(request.replace("\"power\"", "\"hand\"")));
    Band feed = band(evidence, Vocabulary.FEED_PER_TOOTH);
    assertThat(feed.low()).isCloseTo(feed.likely() / 2, withinPercentage(3));
    assertThat(feed.high()).isCloseTo(feed.likely() * 2, withinPercentage(3));
    assertThat(evidence.detail(Vocabulary.FEED_PER_TOOTH).assumptions())
        .extracting(a -> a.input().text())
        .containsExactly("/cut/feedPerTooth");
  }

  @Test
  void theHeightOfAStopIsAssumedOnlyWhereItIsNotGiven() throws IOException {
    Setup given = read(Files.readString(Path.of("seeds/setups/01-top-edge-wire-and-stop.json")));
    Setup high =
        SetupEditor.of(given).hold(given.hold().but().stopHeight(given.stickOutM()).held()).done();
    assertThat(EvidenceGathering.of(given).detail(Vocabulary.STOP_CLEARANCE).assumptions())
        .extracting(a -> a.input().text())
        .contains("/hold/stopHeight");
    Evidence evidence = EvidenceGathering.of(high);
    assertThat(evidence.detail(Vocabulary.STOP_CLEARANCE).assumptions())
        .extracting(a -> a.input().text())
        .doesNotContain("/hold/stopHeight");
    assertThat(band(evidence, Vocabulary.STOP_CLEARANCE).high()).isNegative();
    assertThat(evidence.get(Vocabulary.CLAMPS_TOLD)).isEqualTo(new Value.Truth(false));
    assertThat(evidence.get(Vocabulary.CLAMP_CLEARANCE)).isInstanceOf(Value.Missing.class);
  }

  @Test
  void whatIsNotMeasuredIsMissingOrAssumedAndNeverTakenAsGood() throws IOException {
    Evidence evidence =
        EvidenceGathering.of(
            read(Files.readString(Path.of("seeds/setups/12-nobody-measured.json"))));
    assertThat(evidence.get(Vocabulary.HIGH_SPOT)).isInstanceOf(Value.Missing.class);
    List<String> assumed =
        evidence.detail(Vocabulary.HOLDING_MARGIN).assumptions().stream()
            .filter(a -> a.measure() != null)
            .map(a -> a.input().text())
            .toList();
    assertThat(assumed)
        .contains("/hold/clampingForce", "/stock/highSpot", "/hold/stop", "/hold/seat");
    Band hold = band(evidence, Vocabulary.HOLDING_MARGIN);
    assertThat(hold.high()).isGreaterThan(5 * hold.low());
  }

  /** Two kept at a time, so that most are dropped and solved again while others are read. */
  @Test
  void plateMetBeforeOrNotTheEvidenceIsTheSameToTheLastBitInEveryThread() throws IOException {
    List<Setup> all = new ArrayList<>();
    for (Path file : setups().toList()) {
      all.add(read(Files.readString(file)));
    }
    List<List<EvidenceValue>> fresh =
        all.stream()
            .map(setup -> EvidenceGathering.of(setup, new RememberedPlates(1)).values())
            .toList();
    RememberedPlates shared = new RememberedPlates(2);
    List<Integer> turns =
        IntStream.range(0, 10 * all.size())
            .parallel()
            .map(i -> i % all.size())
            .boxed()
            .filter(i -> !EvidenceGathering.of(all.get(i), shared).values().equals(fresh.get(i)))
            .toList();
    assertThat(turns).isEmpty();
    assertThat(shared.size()).isLessThanOrEqualTo(2);
  }

  private static Setup read(String json) {
    Reading reading = new SetupReader(catalogue).readJson(json);
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    return ((Reading.Accepted) reading).setup();
  }

  private static Band band(Evidence evidence, Fact fact) {
    return ((Value.Quantity) evidence.get(fact)).band();
  }
}
