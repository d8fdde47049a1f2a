package org.standproud.mechanics.reach;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.time.PassPath;
import org.standproud.setup.Band;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;
import org.standproud.setup.request.HoldFields;

/**
 * The pass seen along Y: what cutter and holder sweep from the start of the lead-in to the end of
 * the run-out, against jaws, stock and stops in the plane of X and Z.
 *
 * <p>A stop is a block of {@value #STOP_LENGTH_M} m that touches an end of the stock. Without a
 * given height it may be anywhere from the jaw top to the top of the stock, and half way is taken
 * as likely. Depth of the view is left out: whatever overlaps here is taken to meet, which is sure
 * only of what stands across the whole thickness.
 */
public final class SideView {

  /** The assumption for a stop without a given height. */
  public static final Assumption STOP_HEIGHT =
      new Assumption(
          HoldFields.STOP_HEIGHT,
          "a stop may stand as low as the jaw top or as high as the top of the stock",
          "conservative choice",
          "the height of the top of the stop above the jaws");

  /** How far a stop reaches along the jaws from the end of the stock, in m. */
  static final double STOP_LENGTH_M = 0.02;

  private final Setup setup;
  private final double fromX;
  private final double toX;
  private final List<Envelope> allSwept;

  /**
   * The view of a set-up.
   *
   * @param setup a set-up whose sizes were checked
   */
  public SideView(Setup setup) {
    this.setup = setup;
    PassPath path = PassPath.of(setup);
    double half = path.stockLengthM() / 2;
    boolean forward = setup.cut().feed() == FeedDirection.PLUS_X;
    this.fromX = -half - (forward ? path.leadInM() : path.runOutM());
    this.toX = half + (forward ? path.runOutM() : path.leadInM());
    this.allSwept =
        CutterPart.of(setup.cutter(), setup.stickOutM() - setup.cut().axialDepthM()).stream()
            .map(part -> swept(part, fromX, toX))
            .toList();
  }

  /**
   * Room between the cutter with all above it and the stops over the whole pass in m.
   *
   * @return null if the shop says that there is no stop
   */
  @Nullable Band stopClearanceM() {
    double top = setup.stickOutM();
    Double given = setup.hold().stopHeightM();
    if (setup.hold().stop() == Stop.NONE) {
      return null;
    }
    return given == null
        ? Band.spanning(toStopM(top / 2), toStopM(top), toStopM(0))
        : Band.exactly(toStopM(given));
  }

  /** The same with the top of the stops at one height above the jaw top in m. */
  public double toStopM(double topM) {
    return stops(topM).stream()
        .flatMapToDouble(stop -> swept().stream().mapToDouble(s -> Outline.marginM(s, stop)))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The same with something that stands at each end of the stock, whatever it is called. */
  public double toBlocksM(double topM) {
    double half = setup.stock().lengthM() / 2;
    double bottomM = -setup.hold().vise().jawHeightM();
    return List.of(
            Outline.box(-half - STOP_LENGTH_M, -half, bottomM, topM),
            Outline.box(half, half + STOP_LENGTH_M, bottomM, topM))
        .stream()
        .flatMapToDouble(block -> swept().stream().mapToDouble(s -> Outline.marginM(s, block)))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Room between one moving body and the stock in m. */
  double toStockM(Body moving) {
    double half = setup.stock().lengthM() / 2;
    Envelope stock = Outline.box(-half, half, -setup.hold().gripDepthM(), setup.stickOutM());
    return parts().stream()
        .filter(part -> part.body() == moving)
        .mapToDouble(part -> Outline.marginM(swept(part), stock))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private List<Envelope> stops(double topM) {
    double half = setup.stock().lengthM() / 2;
    double bottomM = -setup.hold().vise().jawHeightM();
    Stop stop = setup.hold().stop();
    List<Envelope> stops = new ArrayList<>();
    if (stop != Stop.NONE && stop != Stop.PLUS_X) {
      stops.add(Outline.box(-half - STOP_LENGTH_M, -half, bottomM, topM));
    }
    if (stop != Stop.NONE && stop != Stop.MINUS_X) {
      stops.add(Outline.box(half, half + STOP_LENGTH_M, bottomM, topM));
    }
    return stops;
  }

  /** The parts of cutter and holder at their height in the pass. */
  List<CutterPart> parts() {
    return CutterPart.of(setup.cutter(), setup.stickOutM() - setup.cut().axialDepthM());
  }

  private List<Envelope> swept() {
    return allSwept;
  }

  /** What a part sweeps from lead-in to run-out. */
  Envelope swept(CutterPart part) {
    return swept(part, fromX, toX);
  }

  private static Envelope swept(CutterPart part, double fromX, double toX) {
    double radius = part.diameterM() / 2;
    return Outline.box(fromX - radius, toX + radius, part.fromZ(), part.toZ());
  }
}
