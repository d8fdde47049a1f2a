package org.standproud.mechanics.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.contact.JointStiffness;
import org.standproud.mechanics.holding.jaw.BestPackingDepth;
import org.standproud.mechanics.holding.jaw.JawBearings;
import org.standproud.mechanics.holding.jaw.JawFriction;
import org.standproud.mechanics.holding.jaw.JawSpan;
import org.standproud.mechanics.holding.jaw.Rocking;
import org.standproud.mechanics.holding.screw.ClampingForce;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.Vise;

/**
 * The hold at the adverse, the likely and the favourable end of everything that is a band, so that
 * a quantity that rises steadily with all of them is spanned by the three.
 *
 * @param clampingForceN clamping force
 * @param friction friction of the weaker face
 * @param adverse least force, friction, stiffness; greatest load
 * @param likely likely values
 * @param favourable the opposite of adverse
 * @param hardClamped greatest load and clamping force on the softest and on the likely jaws, of
 *     which either may press the hardest
 * @param rocking whether the stock may rock on one unknown line
 * @param rockRad how far it then turns freely in rad
 * @param wireSizeM size of the wire at the movable jaw in m, or of the one that could be laid there
 * @param assumptions what was taken for what was not given
 */
record HoldingEnds(
    Band clampingForceN,
    Band friction,
    HoldingEnd adverse,
    HoldingEnd likely,
    HoldingEnd favourable,
    List<HoldingEnd> hardClamped,
    Rocking rocking,
    double rockRad,
    double wireSizeM,
    List<Assumption> assumptions) {

  /**
   * The hold of a set-up at its three ends.
   *
   * @throws OutsideValidity if a value lies outside the range of a formula
   */
  static HoldingEnds of(HoldingInput input) {
    Hold hold = input.hold();
    ClampingForce clamp =
        ClampingForce.of(hold.vise(), hold.clampingForceN(), hold.handleTorqueNm());
    JawFriction friction = JawFriction.of(hold, input.stock().surface(), input.faces());
    double gripM = Math.min(hold.gripDepthM(), hold.vise().jawHeightM());
    double lengthM = JawSpan.of(hold, input.stock().lengthM()).bearingM();
    double pressure = clamp.forceN().low() / (gripM * lengthM);
    double closable = 2 * JointStiffness.approachM(joint(input).low(), pressure);
    JawBearings bearings =
        JawBearings.of(hold, input.stock(), gripM, input.load().heightAboveJawM(), closable);
    Maker maker = new Maker(input, clamp.forceN(), friction.coefficient(), bearings);
    Packing wire = JawBearings.packing(hold, JawSide.MOVABLE);
    List<Assumption> all = new ArrayList<>(clamp.assumptions());
    all.addAll(friction.assumptions());
    all.addAll(bearings.assumptions());
    return new HoldingEnds(
        clamp.forceN(),
        friction.coefficient(),
        maker.adverse(clamp.forceN().low()),
        maker.likely(),
        maker.favourable(),
        List.of(
            maker.adverse(clamp.forceN().high()),
            maker.likely(clamp.forceN().high(), input.load().adverse())),
        bearings.rocking(),
        bearings.gapM() / gripM,
        wireSizeM(wire, gripM),
        all);
  }

  /** Without a line of packing a wire of 3 mm is thought of, or of a third of a shallow grip. */
  static double wireSizeM(@Nullable Packing packing, double gripM) {
    return packing != null && packing.kind() == PackingKind.WIRE
        ? Math.min(packing.sizeM(), gripM)
        : Math.min(3e-3, gripM / 3);
  }

  private static Band joint(HoldingInput input) {
    return JointStiffness.coefficient(input.stock().surface());
  }

  /** The band of a quantity over the three ends. */
  Band band(ToDoubleFunction<HoldingEnd> quantity) {
    return Band.spanning(
        quantity.applyAsDouble(likely),
        quantity.applyAsDouble(adverse),
        quantity.applyAsDouble(favourable));
  }

  /**
   * The same of a turning stiffness, at the adverse end with the rock of a hinge: the stock turns
   * freely by the gap over the grip before it stands, theta_0 = g_0/g, so that the secant at the
   * moment M of the greatest push is 1/(1/k + theta_0/M). Nothing is left on a wire both ways.
   */
  Band turning(ToDoubleFunction<HoldingEnd> quantity) {
    double standing = quantity.applyAsDouble(adverse);
    return Band.spanning(
        quantity.applyAsDouble(likely),
        wireAtFixedJaw() ? 0 : rocked(standing),
        quantity.applyAsDouble(favourable));
  }

  private double rocked(double standing) {
    if (rocking == Rocking.NO || standing <= 0) {
      return standing;
    }
    double pushN = Math.max(1, Math.max(adverse.peaks().towardFixedN(), adverse.peaks().awayN()));
    double momentNm = pushN * adverse.input().load().heightAboveJawM();
    return 1 / (1 / standing + rockRad / momentNm);
  }

  /** The band of a contact height; on a wire both ways none is sure. */
  Band contact(ToDoubleFunction<HoldingEnd> heightM) {
    return Band.spanning(
        heightM.applyAsDouble(likely),
        wireAtFixedJaw() ? 0 : heightM.applyAsDouble(adverse),
        heightM.applyAsDouble(favourable));
  }

  /**
   * The best depth for a wire at the movable jaw in m. It follows the ratio of the two pushes, so
   * that is what is taken to its ends.
   */
  Band bestPackingDepthM() {
    Peaks most = adverse.peaks();
    Peaks least = favourable.peaks();
    Peaks usual = likely.peaks();
    return Band.spanning(
        bestPackingDepthM(usual.towardFixedN(), usual.awayN()),
        bestPackingDepthM(most.towardFixedN(), Math.min(least.awayN(), usual.awayN())),
        bestPackingDepthM(Math.min(least.towardFixedN(), usual.towardFixedN()), most.awayN()));
  }

  private double bestPackingDepthM(double towardFixedN, double awayN) {
    return BestPackingDepth.of(
            likely.gripM(),
            wireSizeM,
            likely.input().load().heightAboveJawM(),
            likely.clampingForceN(),
            likely.shareToward(),
            towardFixedN,
            awayN)
        .depthM();
  }

  private boolean wireAtFixedJaw() {
    return JawBearings.lineDepthM(likely.input().hold(), JawSide.FIXED, likely.gripM()) != null;
  }

  /** Makes the ends of one input. */
  private record Maker(
      HoldingInput input, Band clampingForceN, Band friction, JawBearings bearings) {

    private Vise vise() {
      return input.hold().vise();
    }

    private double gripM() {
      return Math.min(input.hold().gripDepthM(), vise().jawHeightM());
    }

    private double lengthM() {
      return JawSpan.of(input.hold(), input.stock().lengthM()).bearingM();
    }

    private @Nullable Double lineM() {
      return JawBearings.lineDepthM(input.hold(), JawSide.MOVABLE, gripM());
    }

    private static double share(double movable, double fixed) {
      return movable / (movable + fixed);
    }

    HoldingEnd adverse(double forceN) {
      Band fixed = vise().fixedJawStiffnessNPerM();
      Band movable = vise().movableJawStiffnessNPerM();
      Double line = lineM();
      return new HoldingEnd(
          input,
          gripM(),
          lengthM(),
          forceN,
          friction.low(),
          input.load().adverse(),
          bearings.adverse(),
          bearings.adverse(),
          share(movable.high(), fixed.low()),
          0,
          root(joint(input).high(), Band::low, forceN),
          line == null ? Double.valueOf(gripM() / 2) : line,
          vise().movableJawLiftRad().high());
    }

    HoldingEnd likely() {
      return likely(clampingForceN.likely(), input.load().likely());
    }

    /** The likely jaws, at any clamping force and load. */
    HoldingEnd likely(double forceN, Peaks peaks) {
      Double line = lineM();
      return new HoldingEnd(
          input,
          gripM(),
          lengthM(),
          forceN,
          friction.likely(),
          peaks,
          bearings.likely(),
          bearings.likely(),
          share(
              vise().movableJawStiffnessNPerM().likely(), vise().fixedJawStiffnessNPerM().likely()),
          0,
          root(joint(input).likely(), Band::likely, forceN),
          line == null && bearings.hinged() ? Double.valueOf(gripM() / 2) : line,
          vise().movableJawLiftRad().likely());
    }

    HoldingEnd favourable() {
      double share =
          share(vise().movableJawStiffnessNPerM().high(), vise().fixedJawStiffnessNPerM().low());
      return new HoldingEnd(
          input,
          gripM(),
          lengthM(),
          clampingForceN.high(),
          friction.high(),
          input.load().favourable(),
          bearings.favourable(),
          bearings.favourable(),
          0,
          share,
          root(joint(input).low(), Band::high, clampingForceN.high()),
          lineM(),
          vise().movableJawLiftRad().low());
    }

    private JawRoot root(double joint, ToDoubleFunction<Band> end, double forceN) {
      return new JawRoot(
          input.hold(),
          joint,
          end,
          end.applyAsDouble(vise().fixedJawStiffnessNPerM()),
          end.applyAsDouble(vise().movableJawStiffnessNPerM()),
          lengthM(),
          gripM(),
          forceN);
    }
  }
}
