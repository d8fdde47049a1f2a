package org.standproud.mechanics.holding.contact;

/**
 * A high spot between a face of the stock and a jaw, pressed by the clamping force against the
 * elastic layer of the joint.
 *
 * <p>A high place that is long against the thickness is a bow that clamping bends straight: the
 * strip of gripped height g over a span S gives way like a beam on two ends, {@code 48 E g t^3/12 /
 * S^3}, in series with the joint under the spot.
 *
 * <p>A wire at the other jaw presses at its own depth w: away from the spot it turns the stock
 * until the lip of the jaw bears, or the bottom of the grip, whichever side of the spot the wire
 * lies on. The stock then stands on two patches a distance D apart, {@code 0.1 k L g D^2}, and does
 * not turn freely before the push overcomes {@code N |w - d|}.
 *
 * <p>A short one is crushed: it is taken a third of the span wide and flows under three times the
 * yield stress (Tabor, The Hardness of Metals, 1951, from memory), so that it never keeps more than
 * {@code 3 Y (S/3)^2} from the face.
 *
 * <p>The spot is a patch of a fifth of the face, of the same shape as the face: a height of {@code
 * b = sqrt(0.2) g}, a stiffness of {@code K_j = 0.2 k L g}; with the beam in series K_s. Clamping
 * closes it when {@code N = K_s s}; until then all of N stands on the spot and the face stands off
 * by {@code s - N/K_s}. Beyond that, face and spot share what is added. The part of N that is kept
 * from the face resists turning by the patch alone, whose layer is stiffer by the root of its
 * pressure: {@code 0.2^1.5} of the face. The stock does not turn freely before the moment leaves
 * the middle third of the patch; past its edge it turns until an edge of the jaw bears, so that it
 * stands under any clamping force, only softer. Own model, from statics; the fifth is common
 * practice, no source.
 *
 * @param share part of the clamping force that is kept from the face, 0 to 1; rises without a jump
 *     with the height
 * @param gapM what the spot keeps the face off by in m
 * @param rockRad how far the stock turns on it before an edge bears, in rad
 * @param patchM b in m
 * @param depthM depth d of the spot below the jaw top in m
 * @param gripM g in m
 */
public record HighSpot(
    double share, double gapM, double rockRad, double patchM, double depthM, double gripM) {

  private static final double AREA = 0.2;

  /** Turning stiffness of the patch alone over that of the whole face. */
  private static final double PATCH_TURNING = Math.pow(AREA, 1.5);

  /** Turning stiffness of two patches a grip apart over that of the whole face: 0.1 over 1/12. */
  private static final double TWO_PATCHES = 1.2;

  /**
   * A spot under a clamping force.
   *
   * @param heightM s in m, not negative
   * @param depthM its depth below the jaw top in m
   * @param layerPaPerM k of the joint in Pa/m
   * @param lengthM L in m
   * @param gripM g in m
   * @param clampingForceN N in N
   * @param beamNPerM stiffness of the stock against being bent straight in N/m
   * @param crushN force that crushes the spot in N
   */
  public static HighSpot of(
      double heightM,
      double depthM,
      double layerPaPerM,
      double lengthM,
      double gripM,
      double clampingForceN,
      double beamNPerM,
      double crushN) {
    double joint = AREA * layerPaPerM * lengthM * gripM;
    double spot = joint * beamNPerM / (joint + beamNPerM);
    double closing = Math.min(spot * heightM, crushN);
    double patchM = Math.sqrt(AREA) * gripM;
    if (clampingForceN <= closing) {
      double gap = Math.max(0, heightM - clampingForceN / spot);
      return new HighSpot(1, gap, gap / Math.max(depthM, gripM - depthM), patchM, depthM, gripM);
    }
    return new HighSpot(closing / clampingForceN, 0, 0, patchM, depthM, gripM);
  }

  /**
   * Turning stiffness that is left of that of the whole face, 0 to 1.
   *
   * @param wireDepthM depth of a wire at the other jaw in m; NaN if there is none
   */
  public double turningLeft(double wireDepthM) {
    double alone = PATCH_TURNING;
    if (!Double.isNaN(wireDepthM)) {
      double apart = wireDepthM < depthM ? depthM : gripM - depthM;
      double both = Math.min(1, TWO_PATCHES * apart * apart / (gripM * gripM));
      double off = Math.abs(wireDepthM - depthM) / patchM;
      double seated = Math.max(0, Math.min(1, 3 * off - 0.5));
      alone = Math.max(alone, alone + seated * (both - alone));
    }
    return 1 - share * (1 - alone);
  }

  /**
   * Free turn under a moment in rad: none while it stays within the middle third of the patch, or
   * is less than what a wire beside the spot seats the stock with; all of it past the edge.
   *
   * @param momentNm moment about the jaw top in N m
   * @param clampingForceN N in N
   * @param wireDepthM depth of a wire at the other jaw in m; NaN if there is none
   */
  public double freeTurnRad(double momentNm, double clampingForceN, double wireDepthM) {
    double seat = Double.isNaN(wireDepthM) ? 0 : Math.abs(wireDepthM - depthM);
    double within = clampingForceN * Math.max(patchM / 6, seat);
    double past = within + clampingForceN * patchM / 3;
    return rockRad * Math.max(0, Math.min(1, (momentNm - within) / (past - within)));
  }
}
