package org.standproud.mechanics.sampling;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.standproud.mechanics.coupling.EndLoad;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.force.ForceDraw;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.ForceModel;
import org.standproud.mechanics.force.ForceShapes;
import org.standproud.mechanics.force.PathPeaks;
import org.standproud.mechanics.holding.DrawnHold;
import org.standproud.mechanics.holding.DrawnHold.Margins;
import org.standproud.mechanics.holding.HoldDraw;
import org.standproud.mechanics.holding.HoldingInput;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/** The bands of one set-up, and its margins at any single values inside them. */
final class Draws {

  private static final Band ANYWHERE = new Band(-1, 0, 1);

  private final Map<Unknown, Band> bands;
  private final ForceShapes shapes;
  private final DrawnHold hold;

  private Draws(Map<Unknown, Band> bands, ForceShapes shapes, DrawnHold hold) {
    this.bands = bands;
    this.shapes = shapes;
    this.hold = hold;
  }

  /** The bands of a set-up; empty if the cutter passes beside the stock. */
  static Optional<Draws> of(Setup meant) {
    Setup setup = HandFeed.asTheTeethSeeIt(meant);
    ForceInput force = ForceInput.from(setup);
    return ForceShapes.of(force).map(shapes -> of(setup, force, shapes));
  }

  private static Draws of(Setup setup, ForceInput force, ForceShapes shapes) {
    ForceModel.Unknowns law = force.model().unknowns();
    DrawnHold hold =
        DrawnHold.of(
            new HoldingInput(
                setup.hold(), setup.stock(), EndLoad.place(setup), FaceState.of(setup.hold())));
    Map<Unknown, Band> bands = new EnumMap<>(Unknown.class);
    bands.put(Unknown.SPECIFIC_FORCE, law.specificForcePa());
    bands.put(Unknown.EXPONENT, law.exponent());
    bands.put(Unknown.FORCE_FACTOR, law.factor());
    bands.put(Unknown.NORMAL_RATIO, law.normalRatio());
    bands.put(Unknown.LIFT_RATIO, law.liftRatio());
    bands.put(Unknown.FEED, force.cut().feedPerToothM());
    bands.put(Unknown.RUN_OUT, ForceShapes.runOutM(force));
    bands.put(Unknown.CLAMPING_FORCE, hold.clampingForceN());
    bands.put(Unknown.FRICTION, hold.friction());
    bands.put(Unknown.BEARING, ANYWHERE);
    bands.put(Unknown.FIXED_JAW, setup.hold().vise().fixedJawStiffnessNPerM());
    bands.put(Unknown.MOVABLE_JAW, setup.hold().vise().movableJawStiffnessNPerM());
    return new Draws(bands, shapes, hold);
  }

  /** The band of an unknown. */
  Band band(Unknown unknown) {
    return Objects.requireNonNull(bands.get(unknown));
  }

  /** The margins at one value of each unknown. */
  Margins margins(ToDoubleFunction<Unknown> values) {
    PathPeaks peaks =
        shapes.at(
            new ForceDraw(
                values.applyAsDouble(Unknown.SPECIFIC_FORCE)
                    * values.applyAsDouble(Unknown.FORCE_FACTOR),
                values.applyAsDouble(Unknown.EXPONENT),
                values.applyAsDouble(Unknown.FEED),
                values.applyAsDouble(Unknown.RUN_OUT),
                values.applyAsDouble(Unknown.NORMAL_RATIO),
                values.applyAsDouble(Unknown.LIFT_RATIO)));
    return hold.at(
        new HoldDraw(
            values.applyAsDouble(Unknown.CLAMPING_FORCE),
            values.applyAsDouble(Unknown.FRICTION),
            values.applyAsDouble(Unknown.BEARING),
            values.applyAsDouble(Unknown.FIXED_JAW),
            values.applyAsDouble(Unknown.MOVABLE_JAW),
            EndLoad.peaks(peaks)));
  }
}
