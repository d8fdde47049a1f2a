package org.standproud.mechanics.holding;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.holding.contact.ElasticRoot;
import org.standproud.mechanics.holding.contact.ElasticRoot.Stance;
import org.standproud.mechanics.holding.contact.HighSpot;
import org.standproud.mechanics.holding.contact.StockBow;
import org.standproud.mechanics.holding.jaw.BackingHold;
import org.standproud.mechanics.holding.jaw.Bearing;
import org.standproud.mechanics.holding.jaw.JawBearings;
import org.standproud.mechanics.holding.jaw.JawSpan;
import org.standproud.mechanics.holding.jaw.RigidLimits;
import org.standproud.mechanics.holding.slip.GripLimit;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.holding.slip.JawGrip;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Material;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.Stock;

/**
 * One hold at single values of all that is not known; made once, asked many times. A push toward
 * the fixed jaw takes its share from the clamping force; a push away from it is not counted on to
 * add any.
 */
public final class DrawnHold {

  /** The least part of the rigid limit under which stiffness is asked for. */
  private static final double PROBE = 1e-3;

  /** Part of their limit that the jaws take before a backing takes the rest. */
  private static final double WELL_HELD = 0.8;

  private final Hold hold;
  private final Stock stock;
  private final HoldingLoad place;
  private final double gripM;
  private final double lengthM;
  private final @Nullable Double fixedLineM;
  private final @Nullable Double movableLineM;

  private DrawnHold(HoldingInput input) {
    this.hold = input.hold();
    this.stock = input.stock();
    this.place = input.load();
    this.gripM = Math.min(hold.gripDepthM(), hold.vise().jawHeightM());
    this.lengthM = JawSpan.of(hold, stock.lengthM()).bearingM();
    this.fixedLineM = JawBearings.lineDepthM(hold, JawSide.FIXED, gripM);
    this.movableLineM = JawBearings.lineDepthM(hold, JawSide.MOVABLE, gripM);
  }

  /**
   * The margins at one draw; each is capacity over demand.
   *
   * @param combined all together
   * @param slip slip alone
   * @param lift lift alone
   * @param tipTowardFixed tip toward the fixed jaw alone
   * @param tipAway tip away from it alone
   */
  public record Margins(
      double combined, double slip, double lift, double tipTowardFixed, double tipAway) {

    /** The least of all together and of both tips. */
    public double hold() {
      return Math.min(combined, Math.min(tipTowardFixed, tipAway));
    }

    /** The least of them. */
    public double least() {
      return Math.min(hold(), Math.min(slip, lift));
    }
  }

  /**
   * How the stock stands in its jaws.
   *
   * @param margins the margins
   * @param gapMargin push at which a gap begins over the push there is, the lesser of both ways
   * @param turningTowardNmPerRad turning stiffness under a push toward the fixed jaw in N m/rad;
   *     NaN if the push tips the stock
   * @param turningAwayNmPerRad the same the other way
   * @param translationNPerM stiffness of the root across the jaws in N/m
   * @param contactHeightM gripped height that stays on the fixed jaw in m; NaN if it tips
   * @param pressureRatio greatest pressure of a jaw or of packing over yield; NaN if it tips
   * @param bowM bow of the stock in its grip in m
   * @param rocks whether a high spot or a lifting jaw leaves it room to rock
   * @param clampLossShare share of a push toward the fixed jaw that is lost from the clamping force
   */
  public record State(
      Margins margins,
      double gapMargin,
      double turningTowardNmPerRad,
      double turningAwayNmPerRad,
      double translationNPerM,
      double contactHeightM,
      double pressureRatio,
      double bowM,
      boolean rocks,
      double clampLossShare) {

    /** Whether it holds: every margin at least one, and the stock stands. */
    public boolean holds() {
      return margins.least() >= 1 && turningTowardNmPerRad > 0 && turningAwayNmPerRad > 0;
    }
  }

  /**
   * The hold of an input, of whose load only the place counts.
   *
   * @param input the hold
   * @throws OutsideValidity if a value lies outside the range of a formula
   */
  public static DrawnHold of(HoldingInput input) {
    within("stock length", input.stock().lengthM(), 1e-3, 5, "m");
    within("stock thickness", input.stock().thicknessM(), 1e-4, 1, "m");
    within("grip depth", input.hold().gripDepthM(), 1e-3, 0.5, "m");
    within("jaw height", input.hold().vise().jawHeightM(), 1e-3, 0.5, "m");
    within(
        "tilt of the movable jaw", input.hold().vise().movableJawLiftRad().high(), 0, 0.05, "rad");
    for (Packing packing : input.hold().packing()) {
      within("size of the packing", packing.sizeM(), 1e-5, 0.1, "m");
    }
    return new DrawnHold(input);
  }

  /** Gripped height that the jaw faces cover in m. */
  public double gripM() {
    return gripM;
  }

  /** Size of the wire at the movable jaw in m, or of the one that could be laid there. */
  public double wireSizeM() {
    return HoldingEnds.wireSizeM(JawBearings.packing(hold, JawSide.MOVABLE), gripM);
  }

  /** Length of jaw in contact in m. */
  public double lengthM() {
    return lengthM;
  }

  /**
   * How it stands at one draw.
   *
   * @param draw single values
   */
  public State at(HoldDraw draw) {
    double share = draw.movableJawNPerM() / (draw.movableJawNPerM() + draw.fixedJawNPerM());
    double n = draw.clampingForceN();
    RigidLimits limits = new RigidLimits(movable(draw), fixed(), heightM(), share);
    RigidLimits kept = new RigidLimits(movable(draw), fixed(), heightM(), 0);
    BackingHold behind = BackingHold.of(hold, stock, JawSide.FIXED, draw.backingPlace());
    BackingHold before = BackingHold.of(hold, stock, JawSide.MOVABLE, draw.backingPlace());
    double jawsTowardN = limits.towardFixedN(n);
    double jawsAwayN = kept.awayN(n);
    double towardN = jawsTowardN + behind.momentNm() / heightM();
    double awayN = jawsAwayN + before.momentNm() / heightM();
    JawGrip grip = grip(draw, towardN, awayN);
    GripLimit all =
        new GripLimit(
            n,
            draw.friction(),
            share,
            heightM(),
            Math.abs(place.xPositionM()),
            stock.thicknessM(),
            gripM,
            lengthM,
            movable(draw),
            fixed(),
            grip.seated(),
            grip.stopPlusX(),
            grip.stopMinusX(),
            behind,
            before);
    Margins margins =
        new Margins(
            combined(all, draw),
            grip.slipMargin(draw.peaks()),
            grip.liftMargin(draw.peaks()),
            Margin.of(towardN, draw.peaks().towardFixedN()),
            Margin.of(awayN, draw.peaks().awayN()));
    Faces faces = new Faces(draw);
    double pushN = atTheJaws(draw.peaks().towardFixedN(), jawsTowardN, behind);
    double pullN = atTheJaws(draw.peaks().awayN(), jawsAwayN, before);
    Stand pushed = faces.stand(Math.max(pushN, PROBE * jawsTowardN), share);
    Stand pulled = faces.stand(-Math.max(pullN, PROBE * jawsAwayN), share);
    return new State(
        margins,
        gapMargin(draw, share),
        pushed.turningNmPerRad(),
        pulled.turningNmPerRad(),
        faces.root.fixedSideNPerM(),
        fixedLineM != null ? 0 : Math.min(pushed.contactM(), pulled.contactM()),
        pressureRatio(draw, pushed, pulled),
        bowM(draw, faces),
        Math.max(faces.fixedSpot.gapM(), faces.movableSpot.gapM()) * (heightM() + gripM) / gripM
            > JawBearings.HARMLESS_ROCK_M,
        share);
  }

  /**
   * What of a push is left for the jaws: all of it while they hold it well, and what the backing
   * does not take of it beyond.
   */
  private double atTheJaws(double pushN, double jawsN, BackingHold backing) {
    double wellN = WELL_HELD * jawsN;
    return pushN <= wellN ? pushN : Math.max(wellN, pushN - backing.momentNm() / heightM());
  }

  private double heightM() {
    return place.heightAboveJawM();
  }

  private Bearing fixed() {
    return fixedLineM == null ? Bearing.wholeFace(gripM) : Bearing.lineAt(fixedLineM);
  }

  private Bearing movable(HoldDraw draw) {
    return movableLineM == null
        ? new Bearing(gripM / 2 * (1 - draw.bearing()), gripM / 2 * (1 + draw.bearing()))
        : Bearing.lineAt(movableLineM);
  }

  private double gapMargin(HoldDraw draw, double share) {
    JawBearings.Pair pair = new JawBearings.Pair(movable(draw), fixed()).withoutGap(gripM);
    double n = draw.clampingForceN();
    double toward = new RigidLimits(pair.movable(), pair.fixed(), heightM(), share).towardFixedN(n);
    double away = new RigidLimits(pair.movable(), pair.fixed(), heightM(), 0).awayN(n);
    return Math.min(
        Margin.of(toward, draw.peaks().towardFixedN()), Margin.of(away, draw.peaks().awayN()));
  }

  private JawGrip grip(HoldDraw draw, double towardN, double awayN) {
    return new JawGrip(
        draw.clampingForceN(),
        draw.friction(),
        towardN,
        awayN,
        lengthM,
        stock.thicknessM(),
        gripM,
        draw.seated(),
        draw.stop().takesPlusX(),
        draw.stop().takesMinusX());
  }

  private static double combined(GripLimit grip, HoldDraw draw) {
    double least = Margin.GREATEST;
    double[] corners = draw.corners();
    for (int at = 0; at < corners.length; at += 3) {
      least = grip.margin(corners[at], corners[at + 1], corners[at + 2], least);
    }
    return least;
  }

  private double pressureRatio(HoldDraw draw, Stand pushed, Stand pulled) {
    double face;
    if (fixedLineM != null) {
      face =
          Math.max(
              againstFixedLinePa(draw, fixedLineM, draw.peaks().towardFixedN()),
              againstFixedLinePa(draw, fixedLineM, -draw.peaks().awayN()));
    } else {
      face = Math.max(pushed.pressurePa(), pulled.pressurePa());
    }
    double packing =
        PackingLine.stockYieldRatio(
            hold, stock.material(), draw, lengthM, draw.modulusPa(), draw.yieldPa());
    double ratio = Math.max(face / draw.yieldPa(), packing);
    return Double.isFinite(ratio) ? Math.min(Margin.GREATEST, ratio) : Double.NaN;
  }

  /** Pressure on the movable face, which alone takes the moment: triangular over what bears. */
  private double againstFixedLinePa(HoldDraw draw, double depthM, double forceN) {
    double n = draw.clampingForceN();
    double moment = (n + forceN) * depthM + heightM() * forceN;
    double fromEdge = Math.min(moment / n, gripM - moment / n);
    return fromEdge <= 0 ? Double.NaN : 2 * n / (Math.min(gripM, 3 * fromEdge) * lengthM);
  }

  private double bowM(HoldDraw draw, Faces faces) {
    Double line = movableLineM != null ? movableLineM : fixedLineM;
    double part = line != null ? 1 : Math.max(faces.fixedSpot.share(), faces.movableSpot.share());
    if (part == 0) {
      return 0;
    }
    Material material = stock.material();
    return part
        * StockBow.of(
                draw.clampingForceN(),
                line == null ? draw.spotPlace() * gripM : line,
                gripM,
                lengthM,
                stock.thicknessM(),
                draw.modulusPa(),
                material.poissonsRatio())
            .bowM();
  }

  /** Both faces with a high spot on one of them. */
  private final class Faces {
    private final JawRoot root;
    private final HighSpot fixedSpot;
    private final HighSpot movableSpot;
    private final double liftRad;
    private final double fixedLayerPaPerM;
    private final double movableTurningLeft;
    private final @Nullable Double movableLayerPaPerM;
    private final double wireM = movableLineM == null ? Double.NaN : movableLineM;

    Faces(HoldDraw draw) {
      this.root =
          new JawRoot(
              hold,
              draw.jointCoefficient(),
              band -> band.part(draw.packingPlace()),
              draw.fixedJawNPerM(),
              draw.movableJawNPerM(),
              lengthM,
              gripM,
              draw.clampingForceN());
      this.liftRad = draw.liftRad();
      this.fixedSpot = spot(draw, JawSide.FIXED);
      this.movableSpot = spot(draw, JawSide.MOVABLE);
      this.movableTurningLeft = movableSpot.turningLeft(Double.NaN);
      this.fixedLayerPaPerM =
          root.tilting(JawSide.FIXED, root.fixedJawNPerM()) * fixedSpot.turningLeft(wireM);
      this.movableLayerPaPerM =
          movableLineM == null
              ? Double.valueOf(
                  root.tilting(JawSide.MOVABLE, root.movableJawNPerM()) * movableTurningLeft)
              : null;
    }

    private HighSpot spot(HoldDraw draw, JawSide side) {
      boolean here = draw.spotAtFixedJaw() == (side == JawSide.FIXED);
      double worn =
          side == JawSide.FIXED && hold.vise().jawSurface() == JawSurface.WORN
              ? JawBearings.WORN_JAW_M
              : 0;
      Packing packing = JawBearings.packing(hold, side);
      double height = Math.max(here ? draw.spotM() : 0, worn) - JawBearings.takenUpM(packing);
      boolean line =
          packing != null
              && (packing.kind() == PackingKind.WIRE || packing.kind() == PackingKind.STRIP);
      return HighSpot.of(
          line ? 0 : Math.max(0, height),
          draw.spotPlace() * gripM,
          root.layer(side),
          lengthM,
          gripM,
          draw.clampingForceN(),
          4
              * draw.modulusPa()
              * gripM
              * Math.pow(stock.thicknessM() / Math.max(draw.spotSpanM(), 1e-3), 3),
          3 * draw.yieldPa() * draw.spotSpanM() * draw.spotSpanM() / 9);
    }

    private ElasticRoot elastic(double clampingForceN) {
      return new ElasticRoot(
          fixedLayerPaPerM,
          movableLayerPaPerM,
          movableLineM == null ? 0 : movableLineM,
          lengthM,
          gripM,
          clampingForceN,
          liftRad);
    }

    /** How the stock stands under a push; the rock on a spot is in its turning stiffness. */
    Stand stand(double forceN, double share) {
      if (fixedLineM != null) {
        double hinge = movableLineM == null ? root.movableFaceNmPerRad() * movableTurningLeft : 0;
        return new Stand(hinge, 0, Double.NaN);
      }
      double clampN = root.clampingForceN() - share * Math.max(forceN, 0);
      if (forceN == 0 || clampN <= 1) {
        return Stand.TIPS;
      }
      ElasticRoot elastic = elastic(clampN);
      Optional<Stance> rest = elastic.under(0, heightM());
      Optional<Stance> loaded = elastic.under(forceN, heightM());
      if (rest.isEmpty() || loaded.isEmpty()) {
        return Stand.TIPS;
      }
      double momentNm = Math.abs(forceN) * heightM();
      double turnRad =
          Math.abs(loaded.get().turnRad() - rest.get().turnRad())
              + fixedSpot.freeTurnRad(momentNm, clampN, wireM)
              + movableSpot.freeTurnRad(momentNm, clampN, Double.NaN);
      return new Stand(
          momentNm / turnRad, loaded.get().fixedContactM(), loaded.get().peakPressurePa());
    }
  }

  /**
   * How the stock stands under one push.
   *
   * @param turningNmPerRad moment over turn; NaN if it tips, nothing for a hinge
   * @param contactM gripped height on the fixed jaw in m; NaN if it tips
   * @param pressurePa greatest pressure on a face in Pa; NaN if it tips
   */
  private record Stand(double turningNmPerRad, double contactM, double pressurePa) {
    static final Stand TIPS = new Stand(Double.NaN, Double.NaN, Double.NaN);
  }
}
