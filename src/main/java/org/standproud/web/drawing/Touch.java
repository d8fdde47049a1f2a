package org.standproud.web.drawing;

import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.direction.FirstContact;
import org.standproud.mechanics.direction.PassDirections;
import org.standproud.mechanics.engagement.Arc;
import org.standproud.mechanics.engagement.FeedFrame;
import org.standproud.mechanics.engagement.PassGeometry;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.setup.Setup;

/**
 * The contact of cutter and stock, seen from above.
 *
 * @param arc the arc of engagement in steady cutting, in the feed frame
 * @param frame converts back to vise coordinates
 * @param radiusM radius of the cutter in m
 * @param contact the first touch
 */
record Touch(Arc arc, FeedFrame frame, double radiusM, FirstContact contact) {

  /** The contact; empty if the cutter misses the stock or the geometry is outside the formulas. */
  static Optional<Touch> of(Setup setup) {
    try {
      PassGeometry geometry = PassGeometry.of(setup.stock(), setup.cutter(), setup.cut());
      Optional<Arc> arc = geometry.steadyArc();
      return arc.isEmpty()
          ? Optional.empty()
          : PassDirections.of(ForceInput.from(setup))
              .map(
                  directions ->
                      new Touch(
                          arc.get(),
                          geometry.frame(),
                          geometry.radiusM(),
                          directions.firstContact()));
    } catch (OutsideValidity outside) {
      return Optional.empty();
    }
  }

  /** X from the cutter axis of the point of the circle at a tooth angle, in m. */
  double xM(double angleRad) {
    return frame.viseX(radiusM * Math.sin(angleRad));
  }

  /** Y from the cutter axis of the point of the circle at a tooth angle, in m. */
  double yM(double angleRad) {
    return frame.viseY(radiusM * Math.cos(angleRad));
  }
}
