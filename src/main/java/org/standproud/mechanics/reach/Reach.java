package org.standproud.mechanics.reach;

import java.util.Comparator;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.time.PassPath;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Machine;
import org.standproud.setup.Setup;
import org.standproud.setup.request.MachineFields;

/**
 * Whether a set-up goes into the machine and what meets what on the way. All margins in m, positive
 * when there is room. Own geometry of boxes and rounds; the spindle nose and the column are not
 * drawn.
 *
 * @param daylightM room left between spindle nose and cutter when the cutter touches off on top of
 *     the stock with the table at its lowest: nose to table less bed and jaw of the vise, stick-out
 *     and overhang
 * @param downwardM how much further down the spindle could come than the pass asks
 * @param travelXM table travel less the way of the cutter axis
 * @param travelYM half of the saddle travel less the offset of the axis
 * @param openingM greatest opening of the vise less stock and packing
 * @param parallelsHeightM height of the parallels that fill what is under the stock; zero on the
 *     bed, negative if the grip is deeper than the jaws are high
 * @param startM plan distance from cutter to stock before the feed starts; negative: the cutter
 *     comes down into the stock
 * @param clearances room between every moving and standing body on the way
 * @param stopClearanceM room between the cutter with its holder and the stops, lead-in and run-out
 *     counted; null if there is no stop
 * @param clampClearanceM room between the cutter with its holder and the clamps beside the stock;
 *     null if none is given
 * @param assumptions what was assumed
 */
public record Reach(
    double daylightM,
    double downwardM,
    double travelXM,
    double travelYM,
    double openingM,
    double parallelsHeightM,
    double startM,
    List<Clearance> clearances,
    @Nullable Band stopClearanceM,
    @Nullable Double clampClearanceM,
    List<Assumption> assumptions) {

  private static final Assumption MIDDLE_OF_TRAVEL =
      new Assumption(
          MachineFields.TRAVEL_Y,
          "the middle of the stock stands at the middle of the Y travel",
          "common practice, no source");

  /** Copies the lists. */
  public Reach {
    clearances = List.copyOf(clearances);
    assumptions = List.copyOf(assumptions);
  }

  /**
   * Draws a set-up and measures it.
   *
   * @param setup the set-up
   * @throws OutsideValidity if a size of the set-up is negative, no cutter's or beyond 10 m
   */
  public static Reach of(Setup setup) {
    checkSizes(setup);
    Machine machine = setup.machine();
    Hold hold = setup.hold();
    double jawTopM = hold.vise().bedHeightM() + hold.vise().jawHeightM();
    double noseOnTopM = jawTopM + setup.stickOutM() + setup.cutter().overhangM();
    double least =
        FastMath.max(0, machine.noseToTableM() - machine.travelZM() - machine.quillTravelM());
    return new Reach(
        machine.noseToTableM() - noseOnTopM,
        noseOnTopM - setup.cut().axialDepthM() - least,
        machine.travelXM() - PassPath.of(setup).lengthM(),
        machine.travelYM() / 2 - FastMath.abs(setup.cut().offsetM()),
        hold.vise().greatestOpeningM()
            - setup.stock().thicknessM()
            - hold.packingM(JawSide.FIXED)
            - hold.packingM(JawSide.MOVABLE),
        hold.vise().jawHeightM() - hold.gripDepthM(),
        startM(setup),
        new EndView(setup).clearances(),
        new SideView(setup).stopClearanceM(),
        new ClampRoom(setup).leastM(),
        List.of(MIDDLE_OF_TRAVEL));
  }

  /** The pair with the least room. */
  public Clearance closest() {
    return clearances.stream()
        .min(Comparator.comparingDouble(Clearance::marginM))
        .orElseThrow(() -> new IllegalStateException("no bodies were drawn"));
  }

  /** Every pair that runs into each other. */
  public List<Clearance> collisions() {
    return clearances.stream().filter(Clearance::collides).toList();
  }

  private static double startM(Setup setup) {
    double halfLength = setup.stock().lengthM() / 2;
    double halfThickness = setup.stock().thicknessM() / 2;
    double along = halfLength + setup.cut().leadInM();
    // whichever way it is fed: the other way is the mirror image
    GeometryFactory plan = new GeometryFactory();
    double toAxis =
        plan.createPoint(new Coordinate(-along, setup.cut().offsetM()))
            .distance(
                plan.toGeometry(
                    new Envelope(-halfLength, halfLength, -halfThickness, halfThickness)));
    return toAxis - setup.cutter().diameterM() / 2;
  }

  private static void checkSizes(Setup setup) {
    Machine machine = setup.machine();
    length("nose to table", machine.noseToTableM());
    length("travel along X", machine.travelXM());
    length("travel along Y", machine.travelYM());
    length("travel along Z", machine.travelZM());
    length("quill travel", machine.quillTravelM());
    length("bed height of the vise", setup.hold().vise().bedHeightM());
    length("jaw height", setup.hold().vise().jawHeightM());
    length("opening of the vise", setup.hold().vise().greatestOpeningM());
    length("grip depth", setup.hold().gripDepthM());
    length("stick-out of the stock", setup.stickOutM());
    length("stock thickness", setup.stock().thicknessM());
    length("axial depth", setup.cut().axialDepthM());
    OutsideValidity.within("offset of the cutter", setup.cut().offsetM(), -10, 10, "m");
  }

  private static void length(String quantity, double valueM) {
    OutsideValidity.within(quantity, valueM, 0, 10, "m");
  }
}
