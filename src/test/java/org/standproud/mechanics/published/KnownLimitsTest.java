package org.standproud.mechanics.published;

import static org.standproud.mechanics.published.KnownLimit.flagged;
import static org.standproud.mechanics.published.KnownLimit.refused;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.engagement.EdgeInCut;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.mechanics.engagement.PassGeometry;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.evidence.stage.RandomShop;
import org.standproud.mechanics.finish.CornerMark;
import org.standproud.mechanics.finish.RoughnessGrade;
import org.standproud.mechanics.finish.TramError;
import org.standproud.mechanics.force.CuttingCoefficients;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.KienzleLaw;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.force.PublishedCoefficients;
import org.standproud.mechanics.force.ThinChip;
import org.standproud.mechanics.holding.contact.JointStiffness;
import org.standproud.mechanics.holding.contact.LineContact;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.mechanics.holding.slip.JawGrip;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.mechanics.plate.PlateResponse;
import org.standproud.mechanics.plate.PlateResponse.Slenderness;
import org.standproud.mechanics.time.PassPath;
import org.standproud.mechanics.time.PassTime;
import org.standproud.mechanics.vibration.Mode;
import org.standproud.mechanics.vibration.ModeBand;
import org.standproud.mechanics.vibration.Stability;
import org.standproud.mechanics.vibration.Stability.Doubt;
import org.standproud.mechanics.vibration.StabilityInput;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.ForceCoefficients;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;

/** Where each model stops being true, and that the package then refuses or says so. */
@Tag(PublishedTable.TESTS)
class KnownLimitsTest {

  private static PassForces forces(PassFixture pass) {
    return PassForces.of(ForceInput.of(pass.stock(), pass.cutter(), pass.cut())).orElseThrow();
  }

  @Test
  void engagementIsThatOfACircularToothPath() {
    refused(
        Subject.ENGAGEMENT,
        "An entering angle under 5 degrees: the chip is all thrust and h = f_z sin kappa says"
            + " nothing",
        "entering angle",
        () -> EdgeInCut.of(0.002, Math.toRadians(3), 0));
    refused(
        Subject.ENGAGEMENT,
        "A feed per tooth no longer small beside the cutter radius (micro cutters under 1 mm)",
        "cutter radius",
        () ->
            new PassGeometry(
                PassFixture.pass(10, 2, 5, 0, 0.1).cutting().geometry().frame(),
                0.0004,
                -0.001,
                0.001,
                0.1));
  }

  @Test
  void kienzlesLawHoldsForChipsThatWereMeasured() {
    refused(
        Subject.FORCE,
        "A chip over 1 mm, beyond the tables of kc1.1",
        "chip thickness",
        () -> new KienzleLaw(1500e6, 0.22, ThinChip.AS_WRITTEN).specificForcePaAt(1.1e-3));
    double low = new KienzleLaw(1500e6, 0.22, ThinChip.FROZEN).shape(0, 2e-6);
    double high = new KienzleLaw(1500e6, 0.22, ThinChip.FLOORED).shape(0, 2e-6);
    flagged(
        Subject.FORCE,
        "A chip under 0.02 mm, where the edge ploughs and the law extrapolates badly",
        "the band widens: greatest over least force 3 at a chip of 0.002 mm",
        high / low > 3);
    refused(
        Subject.FORCE,
        "A helix over 60 degrees",
        "helix angle",
        () -> forces(PassFixture.pass(20, 4, 10, 0, 0.1).shaped(90, 2, 65, 0)));
    refused(
        Subject.FORCE,
        "A cutter with no tooth left",
        "number of teeth that cut",
        () ->
            forces(PassFixture.pass(20, 2, 10, 0, 0.1).edges(null, List.of(), List.of(0, 1), 0.0)));
    flagged(
        Subject.FORCE,
        "Published coefficient sets without axial terms",
        "the set says that its axial force is not known",
        !PublishedCoefficients.AL_6061_T6_CARBIDE_160.axialKnown());
  }

  @Test
  void holdingIsRigidStaticsWithCoulombFriction() {
    refused(
        Subject.HOLDING,
        "Friction under 0.01 or over 1",
        "jaw friction",
        () -> new JawGrip(1e4, 1.2, 1, 1, 0.1, 0.01, 0.02, false, false, false));
    refused(
        Subject.HOLDING,
        "A cut at the jaw top itself, where the tip limit has no bound",
        "height of the cut",
        () -> new RigidLimits(Bearing.wholeFace(0.02), Bearing.wholeFace(0.02), 0, 0));
    flagged(
        Subject.HOLDING,
        "A movable line above the shallowest place of the fixed jaw's pressure cannot carry a push"
            + " toward the fixed jaw",
        "the limit is nothing, not a small number",
        new RigidLimits(Bearing.lineAt(0.002), Bearing.lineAt(0.005), 0.05, 0).towardFixedN(1e4)
            == 0);
  }

  @Test
  void contactIsElastic() {
    double modulus = LineContact.contactModulusPa(117e9, 0.34, 205e9, 0.3);
    flagged(
        Subject.CONTACT,
        "A soft rod that flows: elastic compression and pressure are bounds only",
        "its yield ratio is over one",
        new LineContact(150e3, 1.5e-3, modulus).yieldRatio(70e6) > 1);
    refused(
        Subject.CONTACT,
        "Faces that hardly touch, under 1 kPa",
        "joint pressure",
        () -> JointStiffness.stiffnessPaPerM(0.6, 100));
  }

  private static Slenderness slenderness(double thicknessM) {
    return PlateResponse.of(
            new PlateInput(
                0.05,
                0.1,
                thicknessM,
                Band.exactly(205e9),
                0.3,
                7850,
                Band.exactly(1e12),
                Band.exactly(1e6),
                0.1,
                new PlatePoint(0, 0.05)))
        .slenderness();
  }

  @Test
  void aPlateIsThin() {
    flagged(
        Subject.PLATE,
        "Thickness over a fifth of the stick-out: shear is only estimated",
        "the stock is called stubby",
        slenderness(0.02) == Slenderness.STUBBY);
    flagged(
        Subject.PLATE,
        "Thicker than it stands out: no plate at all",
        "the stock is called a block",
        slenderness(0.06) == Slenderness.BLOCK);
  }

  private static List<Doubt> doubts(double entryRad, double exitRad, double revPerS) {
    Mode mode = new Mode(1000, 5e6);
    return Stability.of(
            new StabilityInput(
                List.of(new ModeBand(mode, mode, mode)),
                StabilityInput.USUAL_DAMPING,
                List.of(),
                List.of(),
                Band.exactly(2e9),
                0.3,
                4,
                entryRad,
                exitRad,
                0.02,
                revPerS))
        .cautions()
        .stream()
        .map(Stability.Caution::doubt)
        .toList();
  }

  @Test
  void zerothOrderStabilityNeedsALongArcAndASharpEdge() {
    flagged(
        Subject.VIBRATION,
        "An arc shorter than that of a side cut of a tenth of the diameter: lobes of doubled"
            + " period are missed",
        "short arc, in the answer and as a fact",
        doubts(Math.PI - 0.3, Math.PI, 50).contains(Doubt.SHORT_ARC));
    flagged(
        Subject.VIBRATION,
        "More than ten waves between two teeth: a rubbing flank damps and the true limit is higher",
        "flank damping",
        doubts(Math.PI / 2, Math.PI, 5).contains(Doubt.FLANK_DAMPING));
    flagged(
        Subject.VIBRATION,
        "A centred cutter wider than the stock hardly regenerates across it: forced vibration"
            + " governs",
        "no limit worth the name",
        doubts(Math.PI / 2 - 1e-6, Math.PI / 2 + 1e-6, 50).contains(Doubt.HARDLY_REGENERATES));
  }

  @Test
  void theOtherFormulasEndWhereTheirGeometryEnds() {
    refused(
        Subject.FINISH,
        "A feed longer than the round of the corner can form",
        "feed",
        () -> CornerMark.rtM(.5e-3, .4e-3));
    refused(Subject.FINISH, "A surface rougher than N12", "R", () -> RoughnessGrade.of(51e-6));
    refused(
        Subject.FINISH,
        "A cut wider than the cutter has no tram figure",
        "width",
        () -> TramError.hollowM(.05, .06, 1e-4));
    refused(
        Subject.TIME,
        "A table that stands still",
        "feed",
        () -> PassTime.onePassS(new PassPath(0, .1, 0), Band.exactly(0)));
  }

  /** Whatever a stage refuses, the service has no number for its facts, and says what it wants. */
  @Test
  void whatIsRefusedIsMissingFromTheEvidenceAndNotANumber() {
    PassFixture tooMuch = PassFixture.pass(63, 1, 10, 0, 2.5);
    Evidence beyond = EvidenceGathering.of(setup(tooMuch));
    flagged(
        Subject.FORCE,
        "A set-up with a chip beyond the law",
        "its forces, margins and vibration are missing from the evidence with that reason, and every"
            + " card that needs them is open",
        missing(beyond, Vocabulary.PEAK_TANGENTIAL_FORCE)
            && missing(beyond, Vocabulary.HOLDING_MARGIN)
            && missing(beyond, Vocabulary.STABILITY_MARGIN));
    PassFixture beside = PassFixture.pass(50, 4, 10, 42, 0.1);
    flagged(
        Subject.ENGAGEMENT,
        "A cutter that passes beside the stock",
        "nothing of a cut is in the evidence, and it says why",
        missing(EvidenceGathering.of(setup(beside)), Vocabulary.MODE));
  }

  private static boolean missing(Evidence evidence, Fact fact) {
    return evidence.get(fact) instanceof Value.Missing;
  }

  private static Setup setup(PassFixture pass) {
    Setup any = new RandomShop(1).next();
    return new Setup(
        any.job(), pass.stock(), any.hold(), any.machine(), pass.cutter(), pass.cut(), any.units());
  }

  @Test
  void publishedCoefficientsHoldForTheirStockOnly() {
    Stock aluminium = PassFixture.pass(20, 4, 10, 0, 0.1).stock();
    PassFixture pass = PassFixture.pass(20, 4, 10, 0, 0.1);
    Material m = aluminium.material();
    Material steel =
        MaterialBuilder.builder(m)
            .forceCoefficients(ForceCoefficients.AL_7075_T6_CARBIDE_190)
            .build();
    ForceInput foreign =
        ForceInput.of(
            StockBuilder.builder()
                .lengthM(0.2)
                .thicknessM(0.01)
                .heightM(0.1)
                .material(steel)
                .build(),
            pass.cutter(),
            pass.cut());
    flagged(
        Subject.FORCE,
        "Published coefficients of aluminium asked for in steel",
        "said in the assumptions, and the band is stretched to hold Kienzle's law for the steel",
        foreign.assumptions().stream()
            .anyMatch(a -> a.statement().contains("the stock is of group P")));
    refused(
        Subject.FORCE,
        "Coefficients that no metal has",
        "K_tc",
        () -> new CuttingCoefficients(1e5, 0, 0, 0, 0, 0));
    refused(
        Subject.MATERIAL,
        "A chip exponent over 0.6, which no tabled stock has",
        "chip exponent",
        () -> new KienzleLaw(1500e6, 0.7, ThinChip.AS_WRITTEN));
    refused(
        Subject.ENGAGEMENT,
        "More than 60 teeth",
        "number of teeth",
        () -> forces(PassFixture.pass(80, 61, 10, 0, 0.1)));
    refused(
        Subject.FORCE,
        "A run-out of more than 2 mm",
        "run-out",
        () ->
            forces(
                PassFixture.pass(20, 2, 10, 0, 0.1)
                    .edges(EdgeCondition.FRESH, List.of(), List.of(), 2.5)));
  }
}
