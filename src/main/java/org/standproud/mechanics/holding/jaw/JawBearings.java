package org.standproud.mechanics.holding.jaw;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.Stock;
import org.standproud.setup.StockSurface;
import org.standproud.setup.request.StockFields;

/**
 * Where each jaw may bear on the stock, at the adverse, the likely and the favourable end of what
 * is not known.
 *
 * <p>A wire or strip bears at its own depth. A whole face bears anywhere from lip to bottom at
 * best, within its middle third likely, and at mid-grip only if the movable jaw floats and carries
 * no moment. Where the faces cannot close on each other (a high spot, a lifting or a worn movable
 * jaw), packing does not take the gap up and the cut can rock by more than {@link
 * #HARMLESS_ROCK_M}, the stock is on a hinge: it turns freely until the other edge bears, which
 * {@code HoldingEnds} puts into the turning stiffness, and a rough fixed face bears surely only
 * within its middle third. What it finally bears before it tips is that of a floating jaw. Own
 * model.
 *
 * @param adverse worst case
 * @param likely likely case
 * @param favourable best case
 * @param rocking whether the stock may rock on one unknown line of the movable jaw
 * @param gapM the gap over the grip that neither clamping nor packing takes up in m
 * @param assumptions what was taken for what was not given
 */
public record JawBearings(
    Pair adverse,
    Pair likely,
    Pair favourable,
    Rocking rocking,
    double gapM,
    List<Assumption> assumptions) {

  /**
   * How far the stock may rock at the height of the cut before the gap at a jaw is shut again, for
   * the gap not to count: about the bite of one tooth. A gap g_0 over the grip g lets a cut at
   * height H rock by g_0 (H + g)/g. Common practice, no source.
   */
  public static final double HARMLESS_ROCK_M = 0.1e-3;

  /** How far a worn jaw is taken to be dished or bell-mouthed; common practice, no source. */
  public static final double WORN_JAW_M = 0.05e-3;

  /** Copies the list. */
  public JawBearings {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The bearing of both jaws.
   *
   * @param movable of the movable jaw
   * @param fixed of the fixed jaw
   */
  public record Pair(Bearing movable, Bearing fixed) {

    /**
     * This pair held to what leaves no gap at either edge of a whole face.
     *
     * @param gripM gripped height in m
     */
    public Pair withoutGap(double gripM) {
      return new Pair(closed(movable, gripM), closed(fixed, gripM));
    }

    private static Bearing closed(Bearing bearing, double gripM) {
      return bearing.shallowestM() == bearing.deepestM()
          ? bearing
          : new Bearing(
              Math.max(bearing.shallowestM(), gripM / 3),
              Math.min(bearing.deepestM(), 2 * gripM / 3));
    }
  }

  /**
   * The bearings of a hold.
   *
   * @param hold the hold
   * @param stock the stock
   * @param gripM gripped height that the jaw faces cover, in m
   * @param heightM height of the cut above the jaw top in m
   * @param closableGapM the gap that the least clamping force still closes, in m
   * @throws OutsideValidity if packing lies outside the gripped height
   */
  public static JawBearings of(
      Hold hold, Stock stock, double gripM, double heightM, double closableGapM) {
    boolean worn = hold.vise().jawSurface() == JawSurface.WORN;
    double leverage = (heightM + gripM) / gripM;
    double dishedM = worn ? WORN_JAW_M : 0;
    Double measuredM = stock.highSpotM();
    double highSpotM =
        measuredM == null
            ? assumedHighSpotM(stock.surface())
            : within("high spot", measuredM, 0, 0.01, "m");
    double spotM = Math.max(highSpotM, dishedM) - closableGapM;
    double leanM = hold.vise().movableJawLiftRad().high() * gripM - closableGapM;
    double takenUpM = takenUpM(packing(hold, JawSide.MOVABLE));
    double gapM = Math.max(0, Math.max(spotM, leanM) - takenUpM);
    boolean hinged = gapM * leverage > HARMLESS_ROCK_M;
    double sureM = Math.max(dishedM - closableGapM, leanM) - takenUpM;
    boolean assumed = measuredM == null && sureM * leverage <= HARMLESS_ROCK_M;
    Packing behind = packing(hold, JawSide.FIXED);
    boolean rough = (spotM - takenUpM(behind)) * leverage > HARMLESS_ROCK_M;
    Bearing middle = Bearing.lineAt(gripM / 2);
    Bearing whole = Bearing.wholeFace(gripM);
    Bearing third = Bearing.withoutGap(gripM);
    Bearing fixedWorst = line(hold, JawSide.FIXED, gripM, rough ? third : whole);
    Bearing fixed = line(hold, JawSide.FIXED, gripM, whole);
    return new JawBearings(
        new Pair(line(hold, JawSide.MOVABLE, gripM, middle), fixedWorst),
        new Pair(line(hold, JawSide.MOVABLE, gripM, hinged ? middle : third), fixed),
        new Pair(line(hold, JawSide.MOVABLE, gripM, whole), fixed),
        hinged ? (assumed ? Rocking.ON_AN_ASSUMED_SPOT : Rocking.ON_A_GAP) : Rocking.NO,
        gapM,
        measuredM == null ? List.of(assumedSpot(highSpotM)) : List.of());
  }

  /** Whether the stock may rock at all. */
  public boolean hinged() {
    return rocking != Rocking.NO;
  }

  /**
   * How high a spot a piece of packing takes into itself in m: card a third of its thickness, sheet
   * a tenth; a wire or strip keeps the face off the jaw by four fifths of its size. Common
   * practice, no source.
   */
  public static double takenUpM(@Nullable Packing packing) {
    if (packing == null) {
      return 0;
    }
    return packing.sizeM()
        * switch (packing.kind()) {
          case CARD -> 0.3;
          case SHEET -> 0.1;
          case WIRE, STRIP -> 0.8;
        };
  }

  /** The packing on one side, or null. */
  public static @Nullable Packing packing(Hold hold, JawSide side) {
    for (Packing packing : hold.packing()) {
      if (packing.side() == side) {
        return packing;
      }
    }
    return null;
  }

  /** The depth of a line of packing on one side in m, or null if that side bears on a face. */
  public static @Nullable Double lineDepthM(Hold hold, JawSide side, double gripM) {
    Packing packing = packing(hold, side);
    if (packing == null
        || packing.kind() == PackingKind.CARD
        || packing.kind() == PackingKind.SHEET) {
      return null;
    }
    return within("depth of the packing", packing.depthM(), 0, gripM, "m");
  }

  private static Bearing line(Hold hold, JawSide side, double gripM, Bearing otherwise) {
    Double depth = lineDepthM(hold, side, gripM);
    return depth == null ? otherwise : Bearing.lineAt(depth);
  }

  private static Assumption assumedSpot(double assumedM) {
    return new Assumption(
        StockFields.HIGH_SPOT,
        "high spots up to " + assumedM * 1e3 + " mm taken on the gripped faces",
        "common practice, no source",
        "the highest spot of the gripped faces, with a straight edge and feelers");
  }

  private static double assumedHighSpotM(@Nullable StockSurface surface) {
    if (surface == null) {
      return 50e-6;
    }
    return switch (surface) {
      case MACHINED -> 3e-6;
      case ROLLED -> 50e-6;
      case SAWN -> 100e-6;
      case CAST -> 200e-6;
    };
  }
}
