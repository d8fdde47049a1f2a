package org.standproud.mechanics.plate;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.vibration.Mode;

/**
 * A standing plate of given sizes whose modulus, density and foot are still open: what the sizes
 * alone decide is computed once, so that one hold costs some tens of microseconds.
 *
 * <p>Kirchhoff's plate by Rayleigh and Ritz as in {@link CantileverPlate}, condensed to its root
 * ({@link CondensedHalf}); the root is a {@link RootStiffness}, which turns about where the foot
 * really turns. Shear is added by a strip: flexibility times {@code S = 1 + c_s/(c_b + c_r)} with
 * {@code c_s = a/(5/6 G h)}, {@code c_b = a^3/(3 D)} and {@code c_r} the give of the root at the
 * top edge of a strip, frequencies by its root (Timoshenko's beam with Dunkerley's sum, from
 * memory). The mass of the gripped part is left out. Pieces, and the dip that polynomials miss
 * under a point load, as in {@link StandingStock}. Immutable.
 */
public final class PlateOnFoot {

  private static final double MOST_OVERHANG = 30;
  private static final double MISSED = 0.01225;
  private static final double MOST_MISSED = 0.1;
  private static final double MODAL_PIECE = 8;

  /** Modes of each symmetry. */
  static final int MODES_EACH = 3;

  /** Share of the tipping moment at which the root hands a load on to its neighbours. */
  private static final double PLASTIC = 0.9;

  private static final int HALVINGS = 9;

  /** Layers of both faces and depth of the foot about which plates are prepared. */
  private static final double LAYERS_PA_PER_M = 2e12;

  private static final double FOOT_M = 0.02;

  /** Greatest give of the root about which plates are prepared over that of the plate. */
  private static final double MOST_TURN = 10;

  /** Softening of a metre that its load would tip. */
  private static final double LOOSE = 1e3;

  private final double stickOutM;
  private final double lengthM;
  private final double thicknessM;
  private final double heldM;
  private final double poisson;
  private final RitzOrder order;
  private final Piece statics;
  private final Piece modal;
  private final double[][][] trial = new double[2][][];

  /**
   * Prepares a plate.
   *
   * @param stickOutM height above the jaws, m
   * @param lengthM length along the jaws, m
   * @param thicknessM thickness, m
   * @param heldM length of the stock between the jaws, central, m, at most the length
   * @param poisson Poisson's ratio, 0 to 0.49
   * @param likelyYoungPa a modulus about which those asked for lie, Pa
   * @param likelyRoot a root about which those asked for lie; only where to begin
   * @param order how many terms
   * @throws OutsideValidity if a size is out of range
   */
  public PlateOnFoot(
      double stickOutM,
      double lengthM,
      double thicknessM,
      double heldM,
      double poisson,
      double likelyYoungPa,
      RootStiffness likelyRoot,
      RitzOrder order) {
    this.stickOutM = within("stick-out", stickOutM, 1e-4, 10, "m");
    this.lengthM = within("stock length", lengthM, 0.05 * stickOutM, 10, "m");
    this.thicknessM = within("stock thickness", thicknessM, 1e-4, 10, "m");
    this.heldM = within("held length", heldM, 0.1 * lengthM, lengthM, "m");
    this.poisson = within("Poisson's ratio", poisson, 0, 0.49, "");
    this.order = order;
    double d = bendingNM(likelyYoungPa);
    double turn = stickOutM / (d * likelyRoot.turnCompliance());
    double shift = Math.pow(stickOutM, 3) / (d * likelyRoot.shiftCompliance());
    double spread = Math.max(Math.sqrt(2 * (1 - poisson) / turn), Math.pow(4 / shift, 0.25));
    double modalLength = piece(MODAL_PIECE);
    double staticLength = piece(2 * (2 + 2.5 * spread));
    this.modal = new Piece(modalLength);
    this.statics = staticLength == modalLength ? modal : new Piece(staticLength);
    for (int parity = 0; parity < 2; parity++) {
      trial[parity] =
          modal
              .halves[parity]
              .on(
                  scaled(likelyRoot.shiftPa(), 3, d),
                  scaled(likelyRoot.couplingNPerM(), 2, d),
                  scaled(likelyRoot.turnN(), 1, d))
              .modes(modal.halves[parity].start(MODES_EACH + 2), MODES_EACH)
              .shapes();
    }
  }

  /**
   * A standing stock on feet that lie about one of 20 mm between machined faces, whose layers give
   * a micrometre for a pressure of one newton per square millimetre; for a stout plate about one
   * that gives {@value #MOST_TURN} times as much as the plate.
   *
   * @param stock its sizes and material; its root and load do not matter
   */
  public static PlateOnFoot of(PlateInput stock) {
    double young = stock.youngPa().likely();
    double poisson = stock.poisson();
    double a = stock.stickOutM();
    double d = young * Math.pow(stock.thicknessM(), 3) / (12 * (1 - poisson * poisson));
    double turn = Math.min(12 / (LAYERS_PA_PER_M * Math.pow(FOOT_M, 3)), MOST_TURN * a / d);
    double shift = Math.min(2 / (LAYERS_PA_PER_M * FOOT_M), MOST_TURN * a * a * a / d);
    return new PlateOnFoot(
        a,
        stock.lengthM(),
        stock.thicknessM(),
        stock.heldLengthM(),
        poisson,
        young,
        RootStiffness.turningAbout(shift, turn, Math.min(FOOT_M / 2, a)),
        RitzOrder.EVIDENCE);
  }

  private double overhangM() {
    return Math.min(lengthM - heldM, MOST_OVERHANG * stickOutM);
  }

  private double piece(double heldInStickOuts) {
    double longest = 0.999 * PlateGeometry.MAX_ASPECT * stickOutM;
    return Math.min(lengthM, Math.min(longest, heldInStickOuts * stickOutM + overhangM()));
  }

  private double bendingNM(double youngPa) {
    return youngPa * Math.pow(thicknessM, 3) / (12 * (1 - poisson * poisson));
  }

  private double scaled(double stiffness, int power, double d) {
    return stiffness * Math.pow(stickOutM, power) / d;
  }

  /** The part of the stock that is computed. */
  private final class Piece {
    final double pieceM;
    final CondensedHalf[] halves = new CondensedHalf[2];

    Piece(double pieceM) {
      this.pieceM = pieceM;
      double fraction = Math.max(0.1, (pieceM - overhangM()) / pieceM);
      for (int parity = 0; parity < 2; parity++) {
        halves[parity] = new CondensedHalf(pieceM / stickOutM, poisson, fraction, order, parity);
      }
    }

    double local(double xM) {
      double slack = (lengthM - pieceM) / 2;
      return 2 * (xM - Math.max(-slack, Math.min(slack, xM))) / pieceM;
    }
  }

  /** A point at which the plate is loaded or looked at, prepared once. */
  public final class Place {
    private final double xi;
    private final double zM;
    private final CondensedHalf.Seen[] forStatics = new CondensedHalf.Seen[2];
    private final CondensedHalf.Seen[] forModes = new CondensedHalf.Seen[2];

    private Place(PlatePoint point) {
      within("place along the stock", point.xM(), -lengthM / 2, lengthM / 2, "m");
      within("height", point.zM(), 0, stickOutM, "m");
      this.xi = statics.local(point.xM());
      this.zM = point.zM();
      for (int parity = 0; parity < 2; parity++) {
        forStatics[parity] = statics.halves[parity].see(xi, point.zM() / stickOutM);
        forModes[parity] =
            modal.halves[parity].see(modal.local(point.xM()), point.zM() / stickOutM);
      }
    }

    /** What the polynomials miss right under a load, in units of a^2/D. */
    private double missed() {
      double step = statics.pieceM / (stickOutM * order.lengthTerms());
      return Math.min(MOST_MISSED, MISSED * step * step * Math.max(0, 1 - xi * xi))
          * zM
          / stickOutM;
    }
  }

  /**
   * A point of the plate.
   *
   * @throws OutsideValidity if it lies beside the plate
   */
  public Place place(PlatePoint point) {
    return new Place(point);
  }

  private double shearFactor(double youngPa, RootStiffness root) {
    double d = bendingNM(youngPa);
    double shear = stickOutM / (5.0 / 6 * youngPa / (2 * (1 + poisson)) * thicknessM);
    double bend = Math.pow(stickOutM, 3) / (3 * d);
    double atRoot =
        root.shiftCompliance()
            + 2 * stickOutM * root.crossCompliance()
            + stickOutM * stickOutM * root.turnCompliance();
    return 1 + shear / (bend + atRoot);
  }

  private CondensedHalf.OnRoot[] on(Piece piece, double youngPa, RootStiffness root) {
    double d = bendingNM(youngPa);
    CondensedHalf.OnRoot[] both = new CondensedHalf.OnRoot[2];
    for (int parity = 0; parity < 2; parity++) {
      both[parity] =
          piece.halves[parity].on(
              scaled(root.shiftPa(), 3, d),
              scaled(root.couplingNPerM(), 2, d),
              scaled(root.turnN(), 1, d));
    }
    return both;
  }

  /**
   * Deflection across the stock for a load there, m/N.
   *
   * @param place where
   * @param youngPa Young's modulus, Pa
   * @param root what holds the foot
   */
  public double flexibilityMPerN(Place place, double youngPa, RootStiffness root) {
    return flexibilityMPerN(place, youngPa, root, on(statics, youngPa, root));
  }

  private double flexibilityMPerN(
      Place place, double youngPa, RootStiffness root, CondensedHalf.OnRoot[] both) {
    double d = bendingNM(youngPa);
    double unit = 2 * Math.pow(stickOutM, 3) / (d * statics.pieceM);
    double give =
        unit * (both[0].give(place.forStatics[0]) + both[1].give(place.forStatics[1]))
            + place.missed() * stickOutM * stickOutM / d;
    return shearFactor(youngPa, root) * give;
  }

  /** How the plate gives on one root, between any two places. */
  final class Give {
    private final CondensedHalf.OnRoot[] both;
    private final double unit;
    private final double shear;
    private final double missedUnit;

    private Give(double youngPa, RootStiffness root) {
      double d = bendingNM(youngPa);
      this.both = on(statics, youngPa, root);
      this.unit = 2 * Math.pow(stickOutM, 3) / (d * statics.pieceM);
      this.shear = shearFactor(youngPa, root);
      this.missedUnit = stickOutM * stickOutM / d;
    }

    /** Deflection at one place per newton at another, m/N; of either sign where they differ. */
    double between(Place at, Place load) {
      double give = 0;
      for (int parity = 0; parity < 2; parity++) {
        give += both[parity].give(at.forStatics[parity], load.forStatics[parity]);
      }
      return shear * (unit * give + (at == load ? at.missed() * missedUnit : 0));
    }
  }

  /**
   * How the plate gives on a root.
   *
   * @param youngPa Young's modulus, Pa
   * @param root what holds the foot
   */
  Give give(double youngPa, RootStiffness root) {
    return new Give(youngPa, root);
  }

  /**
   * Modes with their shapes.
   *
   * @param omega circular frequencies, 1/s
   * @param at for each place what each mode of unit mass moves there, 1/sqrt(kg)
   */
  record Shapes(double[] omega, double[][] at) {}

  /** The lowest modes of both symmetries as seen at some places, those of the even half first. */
  Shapes shapes(Place[] places, double youngPa, double densityKgPerM3, RootStiffness root) {
    double d = bendingNM(youngPa);
    double unit = Math.sqrt(d / (densityKgPerM3 * thicknessM)) / (stickOutM * stickOutM);
    double halfMass = densityKgPerM3 * thicknessM * stickOutM * modal.pieceM / 2;
    double slower = Math.sqrt(shearFactor(youngPa, root));
    CondensedHalf.OnRoot[] both = on(modal, youngPa, root);
    double[] omega = new double[2 * MODES_EACH];
    double[][] at = new double[places.length][omega.length];
    for (int parity = 0; parity < 2; parity++) {
      CondensedHalf.Modes found = both[parity].modes(trial[parity], MODES_EACH);
      for (int i = 0; i < MODES_EACH; i++) {
        int m = MODES_EACH * parity + i;
        omega[m] = Math.sqrt(found.values()[i]) * unit / slower;
        for (int p = 0; p < places.length; p++) {
          at[p][m] = found.at(i, places[p].forModes[parity]) / Math.sqrt(halfMass);
        }
      }
    }
    return new Shapes(omega, at);
  }

  /**
   * Force and moment about the jaw top that the root bears below a load, per metre of jaw and per
   * newton, 1/m and N.m/m per N.
   */
  double[] rootLoad(Place place, double youngPa, RootStiffness root) {
    return rootLoad(place, youngPa, root, on(statics, youngPa, root));
  }

  private double[] rootLoad(
      Place place, double youngPa, RootStiffness root, CondensedHalf.OnRoot[] both) {
    double unit = 2 * Math.pow(stickOutM, 3) / (bendingNM(youngPa) * statics.pieceM);
    double shift = 0;
    double turn = 0;
    for (int parity = 0; parity < 2; parity++) {
      double[] motion = both[parity].rootUnder(place.forStatics[parity]);
      double[] along = place.forStatics[parity].alongRoot();
      for (int m = 0; m < along.length; m++) {
        shift += along[m] * motion[2 * m] * unit;
        turn += along[m] * motion[2 * m + 1] * unit / stickOutM;
      }
    }
    return new double[] {
      root.shiftPa() * shift + root.couplingNPerM() * turn,
      root.couplingNPerM() * shift + root.turnN() * turn
    };
  }

  /**
   * Deflection per newton under a slow load that may lift the foot off its faces, m/N; NaN if the
   * load tips the stock.
   *
   * <p>The root is softened evenly by what its most loaded metre gives more than without lifting; a
   * metre loaded beyond {@value #PLASTIC} of what tips it hands the rest on to its neighbours, as
   * long as the whole length holds.
   *
   * @param place where
   * @param youngPa Young's modulus, Pa
   * @param foot the clamped foot
   * @param jawsM2PerN shift of the jaws as a whole per force and metre of jaw, m2/N
   * @param rockPerN turn about the jaw top per moment and metre of jaw that costs no pressure, as
   *     on a high spot, rad/N
   * @param forceN force across the stock, toward the fixed jaw positive, N, not zero
   */
  public double secantMPerN(
      Place place,
      double youngPa,
      ClampedFoot foot,
      double jawsM2PerN,
      double rockPerN,
      double forceN) {
    Optional<RootStiffness> held = foot.held();
    if (held.isEmpty()) {
      return Double.NaN;
    }
    double shared = forceN / heldM;
    double whole = foot.softening(shared, shared * place.zM);
    if (Double.isNaN(whole)) {
      return Double.NaN;
    }
    double tipping = foot.tippingNPerM(Math.signum(forceN), place.zM);
    double mostM = Math.max(PLASTIC * tipping, Math.abs(shared)) * place.zM;
    RootStiffness stuck = held.get();
    double least = Math.max(1, whole);
    double most =
        local(
            place,
            youngPa,
            foot,
            stuck.softened(least).onJaws(jawsM2PerN, rockPerN),
            forceN,
            mostM);
    // The softer the root, the less its most loaded metre bears: the two meet in between.
    double softening = Math.max(least, most);
    for (int step = 0; step < HALVINGS && softening > 1.02 * least; step++) {
      double middle = Math.sqrt(least * softening);
      RootStiffness tried = stuck.softened(middle).onJaws(jawsM2PerN, rockPerN);
      if (local(place, youngPa, foot, tried, forceN, mostM) > middle) {
        least = middle;
      } else {
        softening = middle;
      }
    }
    return flexibilityMPerN(place, youngPa, stuck.softened(softening).onJaws(jawsM2PerN, rockPerN));
  }

  /** Softening of the most loaded metre of a root; {@link #LOOSE} where its load tips it. */
  private double local(
      Place place,
      double youngPa,
      ClampedFoot foot,
      RootStiffness root,
      double forceN,
      double mostM) {
    double[] load = rootLoad(place, youngPa, root);
    double moment = Math.abs(load[1] * forceN);
    double scale = forceN * (moment > mostM ? mostM / moment : 1);
    double softening = foot.softening(load[0] * scale, load[1] * scale);
    return Double.isNaN(softening) ? LOOSE : softening;
  }

  /**
   * Give and modes at a point, the modes of the even half first and in order within each half.
   *
   * @param place where
   * @param youngPa Young's modulus, Pa
   * @param densityKgPerM3 density, kg/m3
   * @param root the root
   * @param numbers filled: give in m/N, then the frequencies in Hz, then the stiffnesses in N/m
   */
  void seen(
      Place place, double youngPa, double densityKgPerM3, RootStiffness root, double[] numbers) {
    numbers[0] = flexibilityMPerN(place, youngPa, root);
    List<Mode> modes = byHalf(place, youngPa, densityKgPerM3, root);
    for (int m = 0; m < modes.size(); m++) {
      numbers[1 + m] = modes.get(m).frequencyHz();
      numbers[1 + modes.size() + m] = modes.get(m).stiffnessNPerM();
    }
  }

  /**
   * The lowest modes of both symmetries as seen at a point, in order of frequency.
   *
   * @param place where
   * @param youngPa Young's modulus, Pa
   * @param densityKgPerM3 density, kg/m3
   * @param root the root for small motions
   */
  public List<Mode> modes(Place place, double youngPa, double densityKgPerM3, RootStiffness root) {
    List<Mode> modes = byHalf(place, youngPa, densityKgPerM3, root);
    modes.sort(Comparator.comparingDouble(Mode::frequencyHz));
    return modes;
  }

  private List<Mode> byHalf(
      Place place, double youngPa, double densityKgPerM3, RootStiffness root) {
    double d = bendingNM(youngPa);
    double unit = Math.sqrt(d / (densityKgPerM3 * thicknessM)) / (stickOutM * stickOutM);
    double halfMass = densityKgPerM3 * thicknessM * stickOutM * modal.pieceM / 2;
    double shear = shearFactor(youngPa, root);
    CondensedHalf.OnRoot[] both = on(modal, youngPa, root);
    List<Mode> modes = new ArrayList<>(2 * MODES_EACH);
    for (int parity = 0; parity < 2; parity++) {
      CondensedHalf.Modes found = both[parity].modes(trial[parity], MODES_EACH);
      for (int i = 0; i < MODES_EACH; i++) {
        double omega = Math.sqrt(found.values()[i]) * unit;
        double shape = found.at(i, place.forModes[parity]);
        double stiffness =
            Math.min(PlateMode.NODE_STIFFNESS_N_PER_M, omega * omega * halfMass / (shape * shape));
        modes.add(new Mode(omega / (2 * Math.PI * Math.sqrt(shear)), stiffness / shear));
      }
    }
    return modes;
  }
}
