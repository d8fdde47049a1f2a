package org.standproud.mechanics.holding.contact;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;

/**
 * The foot of the stock, taken as rigid, between two elastic faces that can press but not pull.
 *
 * <p>The foot turns by {@code q} (top toward the fixed jaw positive) until the moment about the jaw
 * top is in balance: {@code w(q) N - H Fy - r(q) (N + Fy) = 0}. The fixed jaw's resultant rises
 * toward the lip as q grows; the movable jaw's sinks, and a movable jaw face that already leans
 * away at the top by its lift sinks it further. Packing that bears on a line keeps {@code w} fixed.
 * The clamping force stays N. Each jaw body's own tilt is lumped into its layer so that the turning
 * stiffness is that of the two in series. Own model (Winkler layer, unilateral); the layer is
 * linear about the mean clamping pressure, so it is soft-sided where the pressure falls and
 * stiff-sided where it rises. The limit of stiff layers is the rigid statics.
 *
 * @param fixedLayerPaPerM stiffness of the fixed face in Pa/m
 * @param movableLayerPaPerM stiffness of the movable face in Pa/m; null if it bears on a line
 * @param lineDepthM depth of the line below the jaw top in m; used only if the movable face bears
 *     on a line
 * @param lengthM length of jaw in contact along X in m
 * @param gripM height in contact in m
 * @param clampingForceN N in N
 * @param movableJawLeanRad how far the movable jaw face leans away at its top in rad, 0 to 0.05
 */
public record ElasticRoot(
    double fixedLayerPaPerM,
    @Nullable Double movableLayerPaPerM,
    double lineDepthM,
    double lengthM,
    double gripM,
    double clampingForceN,
    double movableJawLeanRad) {

  /** The least part of the gripped height that is still called contact. */
  private static final double LEAST_CONTACT = 1e-3;

  private static final int MOST_STEPS = 200;

  /** Relative size of the last step. */
  private static final double NEAR = 1e-10;

  /**
   * Refuses a root outside the range of the model.
   *
   * @throws OutsideValidity if a value is out of range
   */
  public ElasticRoot {
    within("stiffness of the fixed face", fixedLayerPaPerM, 1e6, 1e20, "Pa/m");
    if (movableLayerPaPerM != null) {
      within("stiffness of the movable face", movableLayerPaPerM, 1e6, 1e20, "Pa/m");
    }
    within("jaw contact length", lengthM, 1e-3, 2, "m");
    within("gripped height", gripM, 1e-3, 0.5, "m");
    within("depth of the packing", lineDepthM, 0, gripM, "m");
    within("clamping force", clampingForceN, 1, 1e6, "N");
    within("lean of the movable jaw", movableJawLeanRad, 0, 0.05, "rad");
  }

  /**
   * How the foot stands under a force across the jaws.
   *
   * @param turnRad turn of the foot in rad, top toward the fixed jaw positive
   * @param fixedContactM gripped height that bears on the fixed jaw in m
   * @param movableContactM gripped height that bears on the movable jaw in m; zero for a line
   * @param gapM greatest gap that has opened on either face in m
   * @param peakPressurePa greatest pressure on a flat face in Pa
   */
  public record Stance(
      double turnRad,
      double fixedContactM,
      double movableContactM,
      double gapM,
      double peakPressurePa) {}

  /**
   * How the foot stands, or nothing if the force tips it.
   *
   * @param forceTowardFixedN Fy in N
   * @param heightM H in m
   */
  public Optional<Stance> under(double forceTowardFixedN, double heightM) {
    double fixedForceN = clampingForceN + forceTowardFixedN;
    if (fixedForceN <= LEAST_CONTACT * clampingForceN) {
      return Optional.empty();
    }
    double turn = balancedTurnRad(forceTowardFixedN, heightM);
    return Double.isNaN(turn) ? Optional.empty() : Optional.of(stance(turn, fixedForceN));
  }

  /**
   * The turn at which the moments are in balance, or NaN if the force tips the foot. Where neither
   * face parts the balance is linear in the turn; else Newton's steps within a bracket.
   */
  private double balancedTurnRad(double forceN, double heightM) {
    double fixedForceN = clampingForceN + forceN;
    FaceContact fixed = fixedFace();
    FaceContact movable = movableFace();
    double stiffness = fixed.turningNmPerRad();
    double atRest = imbalanceAtCentreNm(forceN, heightM);
    double turn;
    if (movable == null) {
      turn = -atRest / stiffness;
      if (Math.abs(turn) <= fixed.partingTurnRad(fixedForceN)) {
        return turn;
      }
    } else {
      double other = movable.turningNmPerRad();
      turn = -(atRest + other * movableJawLeanRad) / (stiffness + other);
      if (Math.abs(turn) <= fixed.partingTurnRad(fixedForceN)
          && Math.abs(turn + movableJawLeanRad) <= movable.partingTurnRad(clampingForceN)) {
        return turn;
      }
    }
    double bound = greatestTurnRad(fixedForceN);
    double low = -bound;
    double high = bound;
    if (imbalanceNm(low, forceN, heightM) > 0 || imbalanceNm(high, forceN, heightM) < 0) {
      return Double.NaN;
    }
    turn = Math.max(low, Math.min(high, turn));
    for (int step = 0; step < MOST_STEPS; step++) {
      double imbalance = imbalanceNm(turn, forceN, heightM);
      if (imbalance > 0) {
        high = turn;
      } else {
        low = turn;
      }
      double slope = fixed.turningNmPerRad(fixedForceN, turn);
      if (movable != null) {
        slope += movable.turningNmPerRad(clampingForceN, turn + movableJawLeanRad);
      }
      double next = turn - imbalance / slope;
      if (!(next > low && next < high)) {
        next = between(low, high);
      }
      if (Math.abs(next - turn) <= NEAR * Math.abs(next)) {
        return next;
      }
      turn = next;
    }
    return turn;
  }

  /** Halves a bracket that runs over many decades on either side of zero. */
  private static double between(double low, double high) {
    double middle = (Math.cbrt(low) + Math.cbrt(high)) / 2;
    return middle * middle * middle;
  }

  /** What is out of balance with both faces evenly pressed, the lean left aside. */
  private double imbalanceAtCentreNm(double forceN, double heightM) {
    double w = movableLayerPaPerM == null ? lineDepthM : gripM / 2;
    return w * clampingForceN - heightM * forceN - gripM / 2 * (clampingForceN + forceN);
  }

  /**
   * Turning stiffness of the whole root in N m/rad: moment of the force about the jaw top over the
   * turn that it adds; zero if the force tips the stock.
   *
   * @param forceTowardFixedN Fy in N, not zero
   * @param heightM H in m
   */
  public double turningStiffnessNmPerRad(double forceTowardFixedN, double heightM) {
    Optional<Stance> rest = under(0, heightM);
    Optional<Stance> loaded = under(forceTowardFixedN, heightM);
    if (rest.isEmpty() || loaded.isEmpty()) {
      return 0;
    }
    double turn = loaded.get().turnRad() - rest.get().turnRad();
    return turn == 0 ? 0 : forceTowardFixedN * heightM / turn;
  }

  private double imbalanceNm(double turnRad, double forceN, double heightM) {
    double fixedForceN = clampingForceN + forceN;
    double r = gripM / 2 - fixedFace().offsetM(fixedForceN, turnRad);
    return movableDepthM(turnRad) * clampingForceN - heightM * forceN - r * fixedForceN;
  }

  private double movableDepthM(double turnRad) {
    FaceContact face = movableFace();
    return face == null
        ? lineDepthM
        : gripM / 2 + face.offsetM(clampingForceN, turnRad + movableJawLeanRad);
  }

  private Stance stance(double turnRad, double fixedForceN) {
    FaceContact fixed = fixedFace();
    double fixedContact = fixed.contactHeightM(fixedForceN, turnRad);
    double gap = Math.abs(turnRad) * (gripM - fixedContact);
    double peak = fixed.peakPressurePa(fixedForceN, turnRad);
    FaceContact movable = movableFace();
    if (movable == null) {
      return new Stance(turnRad, fixedContact, 0, gap, peak);
    }
    double lean = turnRad + movableJawLeanRad;
    double movableContact = movable.contactHeightM(clampingForceN, lean);
    return new Stance(
        turnRad,
        fixedContact,
        movableContact,
        Math.max(gap, Math.abs(lean) * (gripM - movableContact)),
        Math.max(peak, movable.peakPressurePa(clampingForceN, lean)));
  }

  /** The turn at which hardly an edge is left in contact on the stiffer-loaded face. */
  private double greatestTurnRad(double fixedForceN) {
    double turn = fixedFace().partingTurnRad(fixedForceN);
    FaceContact movable = movableFace();
    if (movable != null) {
      turn = Math.max(turn, movable.partingTurnRad(clampingForceN) + movableJawLeanRad);
    }
    return turn / (LEAST_CONTACT * LEAST_CONTACT);
  }

  private FaceContact fixedFace() {
    return new FaceContact(fixedLayerPaPerM, lengthM, gripM);
  }

  private @Nullable FaceContact movableFace() {
    return movableLayerPaPerM == null ? null : new FaceContact(movableLayerPaPerM, lengthM, gripM);
  }
}
