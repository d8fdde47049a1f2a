package org.standproud.mechanics.reach;

import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.standproud.setup.Clamp;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;

/**
 * Room between the cutter with all above it and the clamps beside the stock, over the whole pass.
 *
 * <p>A clamp is a box from the foot of the jaws to its top, as far outward as a jaw. Two boxes meet
 * only if they overlap both seen along Y and seen along X, so the room is the greater of the rooms
 * in the two views: never more than the distance there is. A round cutter is taken as the box about
 * it.
 */
final class ClampRoom {

  private final Setup setup;
  private final SideView side;

  /**
   * The clamps of a set-up.
   *
   * @param setup a set-up whose sizes were checked
   */
  ClampRoom(Setup setup) {
    this.setup = setup;
    this.side = new SideView(setup);
  }

  /**
   * The least room in m, negative by how far the cutter or the holder goes into a clamp.
   *
   * @return null if no clamp is given
   */
  @Nullable Double leastM() {
    return setup.hold().beside().isEmpty()
        ? null
        : (Double) setup.hold().beside().stream().mapToDouble(this::toClampM).min().getAsDouble();
  }

  private double toClampM(Clamp clamp) {
    return side.parts().stream()
        .mapToDouble(part -> toClampM(part, clamp))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private double toClampM(CutterPart part, Clamp clamp) {
    double alongY = Outline.marginM(side.swept(part), seenAlongY(clamp));
    double alongX =
        Outline.marginM(EndView.outline(part, setup.cut().offsetM()), seenAlongX(clamp));
    return Math.max(alongY, alongX);
  }

  private Envelope seenAlongY(Clamp clamp) {
    return Outline.box(clamp.fromM(), clamp.toM(), bottomM(), clamp.heightM());
  }

  private Envelope seenAlongX(Clamp clamp) {
    double face = clamp.faceM(setup.stock().thicknessM());
    double outer = face + EndView.JAW_BLOCK_M;
    return clamp.side() == JawSide.FIXED
        ? Outline.box(face, outer, bottomM(), clamp.heightM())
        : Outline.box(-outer, -face, bottomM(), clamp.heightM());
  }

  private double bottomM() {
    return -setup.hold().vise().jawHeightM();
  }
}
