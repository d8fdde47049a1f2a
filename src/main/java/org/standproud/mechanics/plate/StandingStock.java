package org.standproud.mechanics.plate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standproud.mechanics.vibration.Mode;
import org.standproud.mechanics.vibration.ModeBand;
import org.standproud.setup.Band;

/**
 * The stock on its softest, likely and stiffest hold.
 *
 * <p>A long stock is cut to a piece for the computation: what lies far from a load along the jaws
 * does not help to carry it, and leaving it out can only soften the answer. For statics the piece
 * reaches to each side of the load by two stick-outs and by two and a half of the lengths over
 * which the root spreads a load, {@code a sqrt(2 (1-nu) D/(k_theta a))} for tilt and {@code (4
 * D/(k_w a^3))^(1/4) a} for shift; for modes the piece is at least eight stick-outs long. The end
 * nearest to the load stays at its distance, an overhang beyond the jaws stays whole.
 *
 * <p>The polynomials miss the sharp dip right under a point load, so the deflection would come out
 * low. What they miss goes with the square of their spacing there; {@code 0.01225 (L/(a N))^2 (1 -
 * xi^2) (z/a) a^2/D}, never more than {@code 0.1 a^2/D}, is added, with L the length of the piece
 * and N the terms along it. The factor was fitted to the edge-loaded infinite strip.
 *
 * <p>Shear, which Kirchhoff leaves out, is added by a strip of the plate: flexibility is multiplied
 * by {@code S = 1 + c_s/(c_b + c_r + c_t)} with {@code c_s = a/(5/6 G h)}, {@code c_b = a^3/(3 D)},
 * {@code c_r = a^2/k_theta}, {@code c_t = 1/k_w}, and frequencies are divided by its root
 * (Timoshenko's beam with Dunkerley's sum, from memory).
 */
final class StandingStock {

  /** Modes kept of each symmetry, and reported of both. */
  private static final int MODES_EACH = 4;

  /** Longest overhang counted, both ends together, in stick-outs. */
  private static final double MOST_OVERHANG = 30;

  /** What polynomials of unit spacing miss under a load, in units of a^2/D. */
  private static final double MISSED = 0.01225;

  private static final double MOST_MISSED = 0.1;

  private static final int MODES_REPORTED = 6;

  /** Least length of the piece for modes, in stick-outs. */
  private static final double MODAL_PIECE = 8;

  private final PlateInput input;
  private final RitzOrder order;
  private final Scenario soft;
  private final Scenario likely;
  private final Scenario stiff;

  StandingStock(PlateInput input, RitzOrder order) {
    this.input = input;
    this.order = order;
    this.likely =
        new Scenario(
            input.youngPa().likely(),
            input.rootTranslationNPerM2().likely(),
            input.rootRotationNPerRad().likely());
    this.soft = scenario(Band::low);
    this.stiff = scenario(Band::high);
  }

  /** Length beyond both ends of the jaws, as far as it can be counted, m. */
  private double overhangM() {
    double all = input.lengthM() - input.heldLengthM();
    return Math.min(all, MOST_OVERHANG * input.stickOutM());
  }

  private Scenario scenario(ToDoubleFunction<Band> end) {
    double youngPa = end.applyAsDouble(input.youngPa());
    double translation = end.applyAsDouble(input.rootTranslationNPerM2());
    double rotation = end.applyAsDouble(input.rootRotationNPerRad());
    return likely.is(youngPa, translation, rotation)
        ? likely
        : new Scenario(youngPa, translation, rotation);
  }

  PlateResponse response() {
    PlatePoint mid = new PlatePoint(0, input.stickOutM());
    PlatePoint corner = new PlatePoint(input.lengthM() / 2, input.stickOutM());
    List<int[]> ranked = ranked();
    return new PlateResponse(
        band(s -> s.flexibility(input.load())),
        band(s -> s.flexibility(mid)),
        band(s -> s.flexibility(corner)),
        band(s -> s.rootMoment(input.load())),
        modesAt(ranked, input.load()),
        modesAt(ranked, mid),
        modesAt(ranked, corner),
        PlateResponse.Slenderness.of(input),
        remarks());
  }

  /** Flexibility at an end of the top edge on the likely hold, frequencies, modal stiffnesses. */
  void corner(int modesEach, double[] numbers) {
    PlatePoint corner = new PlatePoint(input.lengthM() / 2, input.stickOutM());
    numbers[0] = likely.flexibility(corner);
    for (int m = 0; m < 2 * modesEach; m++) {
      Mode mode = likely.mode(m % 2, m / 2, corner);
      numbers[1 + m] = mode.frequencyHz();
      numbers[1 + 2 * modesEach + m] = mode.stiffnessNPerM();
    }
  }

  EdgeFlexibility edge(int places) {
    List<EdgeFlexibility.Place> edge = new ArrayList<>(places);
    for (int i = 0; i < places; i++) {
      double x = input.lengthM() * ((double) i / (places - 1) - 0.5);
      PlatePoint here = new PlatePoint(x, input.stickOutM());
      edge.add(
          new EdgeFlexibility.Place(x, band(s -> s.flexibility(here)), likely.fromTheEnd(here)));
    }
    return new EdgeFlexibility(edge);
  }

  private Band band(ToDoubleFunction<Scenario> of) {
    return Band.spanning(of.applyAsDouble(likely), of.applyAsDouble(soft), of.applyAsDouble(stiff));
  }

  /** Symmetry (0 even, 1 odd) and place in it of the lowest modes of the likely hold. */
  private List<int[]> ranked() {
    List<int[]> all = new ArrayList<>();
    for (int parity = 0; parity < 2; parity++) {
      for (int i = 0; i < MODES_EACH; i++) {
        all.add(new int[] {parity, i});
      }
    }
    all.sort(Comparator.comparingDouble(m -> likely.modes.get(m[0]).get(m[1]).frequencyHz()));
    return all.subList(0, MODES_REPORTED);
  }

  private List<ModeBand> modesAt(List<int[]> ranked, PlatePoint point) {
    return ranked.stream()
        .map(
            m ->
                new ModeBand(
                    soft.mode(m[0], m[1], point),
                    likely.mode(m[0], m[1], point),
                    stiff.mode(m[0], m[1], point)))
        .toList();
  }

  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (PlateResponse.Slenderness.of(input) != PlateResponse.Slenderness.PLATE) {
      remarks.add(
          "thickness above a fifth of the stick-out: thin-plate theory with shear estimated by a"
              + " strip");
    }
    if (likely.modalLengthM < input.lengthM()) {
      remarks.add(
          "modes are those of a piece shorter than the stock: the first is kept, the ones above it"
              + " lie closer together on the stock, and the modal masses are on the light side");
    }
    if (soft.turn <= CantileverPlate.SOFTEST_ROOT) {
      remarks.add("the softest hold does not resist tilt at all");
    }
    if (overhangM() < input.lengthM() - input.heldLengthM()) {
      remarks.add(
          "the stock reaches far beyond the jaws: only thirty stick-outs of it are counted");
    }
    if (input.lengthM() < 2 * input.thicknessM()) {
      remarks.add("the stock is a post, not a plate: its twist is only estimated");
    }
    return remarks;
  }

  /** The stock on one hold. */
  private final class Scenario {
    private final double youngPa;
    private final PlateRoot.Elastic root;
    private final double turn;
    private final double shear;
    private final double staticLengthM;
    private final double modalLengthM;
    private final CantileverPlate staticPlate;
    private final List<List<PlateMode>> modes;

    Scenario(double youngPa, double translation, double rotation) {
      this.youngPa = youngPa;
      this.root = new PlateRoot.Elastic(translation, rotation, 1);
      PlateGeometry strip = geometry(input.stickOutM());
      double shift = CantileverPlate.shiftNumber(strip, root);
      this.turn = CantileverPlate.turnNumber(strip, root);
      this.shear = shearFactor(shift);
      double spread =
          Math.max(Math.sqrt(2 * (1 - input.poisson()) / turn), Math.pow(4 / shift, 0.25));
      this.staticLengthM = piece(2 * (2 + 2.5 * spread));
      this.modalLengthM = piece(MODAL_PIECE);
      CantileverPlate modal = plate(modalLengthM);
      this.staticPlate = staticLengthM == modalLengthM ? modal : plate(staticLengthM);
      this.modes = List.of(modal.modes(true, MODES_EACH), modal.modes(false, MODES_EACH));
    }

    boolean is(double otherYoungPa, double translation, double rotation) {
      return youngPa == otherYoungPa
          && root.translationNPerM2() == translation
          && root.rotationNPerRad() == rotation;
    }

    private double shearFactor(double shift) {
      double h2 = Math.pow(input.thicknessM() / input.stickOutM(), 2);
      // All four strip flexibilities in units of a^3/D; G and D share the modulus.
      double shearPart = h2 / (6 * (1 - input.poisson()) * 5.0 / 6);
      return 1 + shearPart / (1.0 / 3 + 1 / turn + 1 / shift);
    }

    private double piece(double heldInStickOuts) {
      double longest = 0.999 * PlateGeometry.MAX_ASPECT * input.stickOutM();
      double wanted = heldInStickOuts * input.stickOutM() + overhangM();
      return Math.min(input.lengthM(), Math.min(longest, wanted));
    }

    private CantileverPlate plate(double lengthM) {
      double fraction = Math.max(0.1, (lengthM - overhangM()) / lengthM);
      return new CantileverPlate(
          geometry(lengthM),
          new PlateRoot.Elastic(root.translationNPerM2(), root.rotationNPerRad(), fraction),
          order);
    }

    private PlateGeometry geometry(double lengthM) {
      return new PlateGeometry(
          input.stickOutM(),
          lengthM,
          input.thicknessM(),
          youngPa,
          input.poisson(),
          input.densityKgPerM3());
    }

    double flexibility(PlatePoint point) {
      PlatePoint local = onPiece(point, staticLengthM);
      return shear * (staticPlate.flexibilityMPerN(local, local) + allowance(local));
    }

    /** Deflection at a point for a load at the end of positive X; nothing beyond the piece. */
    double fromTheEnd(PlatePoint point) {
      PlatePoint load = new PlatePoint(staticLengthM / 2, input.stickOutM());
      double x = point.xM() - (input.lengthM() - staticLengthM) / 2;
      return x < -staticLengthM / 2
          ? 0
          : shear * staticPlate.flexibilityMPerN(load, new PlatePoint(x, point.zM()));
    }

    private double allowance(PlatePoint local) {
      double xi = 2 * local.xM() / staticLengthM;
      double step = staticLengthM / (input.stickOutM() * order.lengthTerms());
      double missed = Math.min(MOST_MISSED, MISSED * step * step * Math.max(0, 1 - xi * xi));
      double unit =
          Math.pow(input.stickOutM(), 2) / geometry(input.stickOutM()).bendingStiffnessNM();
      return missed * unit * local.zM() / input.stickOutM();
    }

    double rootMoment(PlatePoint point) {
      PlatePoint local = onPiece(point, staticLengthM);
      double reach = (staticLengthM - overhangM()) / 2;
      double below = Math.max(-reach, Math.min(reach, local.xM()));
      return Math.abs(staticPlate.rootMomentPerMetre(local, below));
    }

    Mode mode(int parity, int index, PlatePoint point) {
      PlateMode mode = modes.get(parity).get(index);
      double stiffness = mode.stiffnessNPerM(onPiece(point, modalLengthM));
      return new Mode(mode.frequencyHz() / Math.sqrt(shear), stiffness / shear);
    }

    private PlatePoint onPiece(PlatePoint point, double pieceM) {
      double slack = (input.lengthM() - pieceM) / 2;
      double shifted = point.xM() - Math.max(-slack, Math.min(slack, point.xM()));
      return new PlatePoint(shifted, point.zM());
    }
  }
}
