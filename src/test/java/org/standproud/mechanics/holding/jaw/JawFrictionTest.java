package org.standproud.mechanics.holding.jaw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.ResultKind;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;
import org.standproud.setup.ClampScrew;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.StockSurface;
import org.standproud.setup.Vise;
import org.standproud.setup.ViseBuilder;

class JawFrictionTest {

  private static Band band(
      JawSurface jaw, @Nullable StockSurface surface, FaceState state, Packing... packing) {
    Band one = Band.exactly(1e8);
    ClampScrew screw =
        new ClampScrew(0.018, 0.004, 0.26, Band.exactly(0.12), 0.028, Band.exactly(0.12));
    Vise vise =
        ViseBuilder.builder()
            .name("vise")
            .jawWidthM(0.15)
            .jawHeightM(0.04)
            .greatestOpeningM(0.2)
            .bedHeightM(0.06)
            .screw(screw)
            .greatestClampingForceN(40_000)
            .jawSurface(jaw)
            .fixedJawStiffnessNPerM(one)
            .movableJawStiffnessNPerM(one)
            .movableJawLiftRad(Band.exactly(0))
            .build();
    Hold hold = Hold.in(vise, 0.015).packing(List.of(packing)).held();
    return JawFriction.of(hold, surface, state).coefficient();
  }

  @Test
  @DisplayName(
      "Machined faces 0.10 to 0.20: clamped-joint friction table 2009, taken low for milling")
  void machinedFacesInAGroundViseTakeTenToTwentyHundredths() {
    assertThat(band(JawSurface.GROUND, StockSurface.MACHINED, FaceState.CLEAN))
        .isEqualTo(new Band(0.10, 0.15, 0.20));
  }

  @ParameterizedTest(name = "{0}: {1} to {2} published, never taken higher")
  @CsvSource({
    // Clamped-joint friction table 2009; serrated from Korsakov and Goroshkin, from memory.
    "GROUND, .15, .25",
    "SOFT, .12, .20",
    "SERRATED, .40, 1.0",
    "WORN, .15, .25"
  })
  void theBandStaysBelowThePublishedDryFigures(JawSurface jaw, double low, double high) {
    Band band = band(jaw, StockSurface.MACHINED, FaceState.CLEAN);
    assertThat(band.low()).isLessThanOrEqualTo(low);
    assertThat(band.high()).isLessThanOrEqualTo(high);
  }

  private static final PublishedTable PAIRS =
      new PublishedTable(
          Subject.HOLDING,
          "static friction of clean and greased pairs: clamped-joint friction table 2009;"
              + " engineering guide appendix A-32; table quoting Gieck and Davis; open textbook"
              + " appendix A",
          SourceTag.FOUND,
          ResultKind.STORED);

  /** The least friction that is counted on is never more than what was published for a pair. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: {3}")
  @CsvSource({
    "'steel on steel, machined, degreased', GROUND, CLEAN, .12",
    "'steel on steel, untreated', GROUND, CLEAN, .15",
    "'steel on cast iron, degreased', GROUND, CLEAN, .15",
    "'steel on cast iron, untreated', GROUND, CLEAN, .18",
    "'aluminium alloys, degreased', SOFT, CLEAN, .08",
    "'aluminium alloys, untreated', SOFT, CLEAN, .12",
    "'sand-blasted steel', SERRATED, CLEAN, .45",
    "'steel on steel, guide, dry', GROUND, CLEAN, .12",
    "'steel on steel, guide, greased', GROUND, OILY, .12",
    "'steel on steel, clean, laboratory', GROUND, CLEAN, .78",
    "'steel on steel, oxide film', GROUND, CLEAN, .27",
    "'steel on steel, Gieck', GROUND, CLEAN, .15",
    "'steel on steel, Davis', GROUND, CLEAN, .31",
    "'aluminium on mild steel, sliding', GROUND, CLEAN, .47",
    "'aluminium on mild steel, static', GROUND, CLEAN, .61",
    "'brass on steel', GROUND, CLEAN, .51",
    "'brass on steel, greased', GROUND, OILY, .19",
    "'cast iron on steel', GROUND, CLEAN, .40",
    "'cast iron on steel, greased', GROUND, OILY, .21",
    "'cast iron on cast iron, static', WORN, CLEAN, 1.1",
    "'cast iron on cast iron, sliding', WORN, CLEAN, .15",
    "'cast iron on cast iron, greased', WORN, OILY, .07"
  })
  void theLeastFrictionTakenIsNoMoreThanPublished(
      String pair, JawSurface jaw, FaceState state, double published) {
    Band taken = band(jaw, StockSurface.MACHINED, state);
    PAIRS.row(pair).noMoreThan("least friction taken", "", published, taken.low());
  }

  private static final PublishedTable FIXTURES =
      new PublishedTable(
          Subject.HOLDING,
          "static friction for holding, fixture texts of Korsakov and Goroshkin",
          SourceTag.MEMORY,
          ResultKind.STORED);

  /** Korsakov; Goroshkin [memory]: each pair from its least to its greatest figure. */
  @Tag(PublishedTable.TESTS)
  @ParameterizedTest(name = "{0}: {3} to {4} [memory]")
  @CsvSource({
    "flat machined faces, GROUND, UNKNOWN, .10, .16",
    "flat machined faces in a worn vise, WORN, UNKNOWN, .10, .16",
    "smooth hardened jaw, GROUND, CLEAN, .16, .25",
    "serrated jaw, SERRATED, CLEAN, .4, 1.0"
  })
  void theLeastFrictionTakenIsNoMoreThanThatOfTheFixtureTexts(
      String pair, JawSurface jaw, FaceState state, double least, double greatest) {
    Band taken = band(jaw, StockSurface.MACHINED, state);
    FIXTURES.row(pair).noMoreThan("least friction taken", "", least, taken.low());
    assertThat(taken.likely()).isLessThanOrEqualTo(greatest);
  }

  @ParameterizedTest
  @EnumSource(JawSurface.class)
  void oilNeverRaisesAndGreasedCastIronIsTheFloor(JawSurface jaw) {
    Band dry = band(jaw, null, FaceState.CLEAN);
    Band oily = band(jaw, null, FaceState.OILY);
    assertThat(oily.low()).isLessThanOrEqualTo(dry.low()).isGreaterThanOrEqualTo(0.07);
    assertThat(oily.likely()).isLessThanOrEqualTo(dry.likely());
    assertThat(oily.high()).isLessThanOrEqualTo(dry.high());
  }

  @ParameterizedTest
  @EnumSource(JawSurface.class)
  void facesOfWhichNothingIsKnownAreAnythingFromOilyToDry(JawSurface jaw) {
    Band dry = band(jaw, null, FaceState.CLEAN);
    Band oily = band(jaw, null, FaceState.OILY);
    Band unknown = band(jaw, null, FaceState.UNKNOWN);
    assertThat(unknown.low()).isEqualTo(oily.low());
    assertThat(unknown.high()).isEqualTo(dry.high());
    assertThat(unknown.likely()).isBetween(oily.likely(), dry.likely());
  }

  @Test
  void aWireTakesTheTeethOfASerratedJawOutOfTheWork() {
    Packing wire =
        new Packing(JawSide.MOVABLE, PackingKind.WIRE, PackingMaterial.ALUMINIUM, 0.003, 0.007);
    assertThat(band(JawSurface.SERRATED, StockSurface.ROLLED, FaceState.CLEAN, wire).high())
        .isLessThan(band(JawSurface.SERRATED, StockSurface.ROLLED, FaceState.CLEAN).high());
  }
}
