package org.standproud.mechanics.vibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.standproud.setup.Band;

/**
 * Whether a cut would chatter: the limit of its axial depth, over the band of hold, damping and
 * cutting force.
 *
 * <p>Least: softest hold, least damping, greatest cutting force. Greatest: the other way round. The
 * least of the depth at the given speed is the depth that no speed chatters at, for the lobes move
 * with the natural frequency and no cut may rely on standing between two of them.
 *
 * @param leastDepthM depth below which no speed chatters, m
 * @param depthAtSpeedM limit of the depth at the given speed, m, at most {@link
 *     StabilityLobes#CAP_M}
 * @param chatterHz frequency of the chatter, Hz
 * @param soft the chart at the least end of everything, for plots
 * @param likely the chart of the likely hold, for plots and better speeds
 * @param stiff the chart at the greatest end of everything
 * @param cautions where the theory stops being true for this cut
 */
public record Stability(
    Band leastDepthM,
    Band depthAtSpeedM,
    Band chatterHz,
    StabilityLobes soft,
    StabilityLobes likely,
    StabilityLobes stiff,
    List<Caution> cautions) {

  /** Arc of a side cut of a tenth of the diameter, rad: shorter arcs are a row of blows. */
  private static final double SHORT_ARC_RAD = Math.acos(1 - 2 * 0.1);

  /** Waves between two teeth above which a rubbing flank damps: common practice, no source. */
  private static final double MANY_WAVES = 10;

  /** A mode this many times as stiff as the softest has its node at the tool and is left out. */
  public static final double NODE = 1e4;

  /** Copies the list. */
  public Stability {
    cautions = List.copyOf(cautions);
  }

  /** Why an answer is to be taken with care. */
  public enum Doubt {
    /** The arc is short: extra lobes that the mean force does not show. */
    SHORT_ARC,
    /** The speed is low: the flank rubs on the waves and the true limit is higher. */
    FLANK_DAMPING,
    /** The cut hardly regenerates in this direction: no limit worth the name. */
    HARDLY_REGENERATES
  }

  /**
   * A doubt with its reason.
   *
   * @param doubt what kind
   * @param reason the numbers behind it
   */
  public record Caution(Doubt doubt, String reason) {}

  /**
   * Whether an arc is so short that the cut is a row of blows.
   *
   * @param arcRad arc in cut, rad
   */
  public static boolean isShort(double arcRad) {
    return arcRad < SHORT_ARC_RAD;
  }

  /**
   * Judges a cut.
   *
   * @param input the cut and the stock
   */
  public static Stability of(StabilityInput input) {
    StabilityLobes soft =
        lobes(input, ModeBand::soft, input.dampingRatio().low(), input.tangentialPa().high());
    StabilityLobes likely =
        lobes(
            input, ModeBand::likely, input.dampingRatio().likely(), input.tangentialPa().likely());
    StabilityLobes stiff =
        lobes(input, ModeBand::stiff, input.dampingRatio().high(), input.tangentialPa().low());
    return new Stability(
        Band.spanning(likely.leastDepthM(), soft.leastDepthM(), stiff.leastDepthM()),
        depthAtM(input.revPerS(), soft, likely, stiff),
        Band.spanning(likely.chatterHz(), soft.chatterHz(), stiff.chatterHz()),
        soft,
        likely,
        stiff,
        cautions(input, likely));
  }

  /**
   * Limit of the depth at any spindle speed, m, its least and greatest as at the given speed.
   *
   * @param revPerS spindle speed, 1/s
   */
  public Band depthAtM(double revPerS) {
    return depthAtM(revPerS, soft, likely, stiff);
  }

  private static Band depthAtM(
      double revPerS, StabilityLobes soft, StabilityLobes likely, StabilityLobes stiff) {
    double leastM =
        Math.min(likely.leastDepthM(), Math.min(soft.leastDepthM(), stiff.leastDepthM()));
    return Band.spanning(
        likely.depthAtM(revPerS), soft.depthAtM(revPerS), stiff.depthAtM(revPerS), leastM);
  }

  private static StabilityLobes lobes(
      StabilityInput input,
      Function<ModeBand, Mode> hold,
      double dampingRatio,
      double tangentialPa) {
    List<DampedMode> across = new ArrayList<>(input.cutterAcross());
    double softest =
        input.acrossFeed().stream()
            .mapToDouble(m -> hold.apply(m).stiffnessNPerM())
            .min()
            .orElseThrow();
    for (ModeBand band : input.acrossFeed()) {
      Mode mode = hold.apply(band);
      if (mode.stiffnessNPerM() <= NODE * softest) {
        across.add(new DampedMode(mode.frequencyHz(), dampingRatio, mode.stiffnessNPerM()));
      }
    }
    return StabilityLobes.milling(
        input.cutterAlong(),
        across,
        DirectionalFactors.of(input.entryRad(), input.exitRad(), input.radialRatio()),
        tangentialPa,
        input.teeth());
  }

  private static List<Caution> cautions(StabilityInput input, StabilityLobes likely) {
    List<Caution> cautions = new ArrayList<>();
    double arc = input.exitRad() - input.entryRad();
    double width = (Math.cos(input.entryRad()) - Math.cos(input.exitRad())) / 2;
    if (isShort(arc)) {
      cautions.add(
          new Caution(
              Doubt.SHORT_ARC,
              text(
                  "a tooth cuts over %.0f degrees and the width is %.2f of the diameter; below %.0f"
                      + " degrees (a side cut of a tenth) extra lobes may lie lower",
                  Math.toDegrees(arc), width, Math.toDegrees(SHORT_ARC_RAD))));
    }
    double waves = likely.chatterHz() / (input.teeth() * input.revPerS());
    if (waves > MANY_WAVES) {
      double waveM = Math.PI * input.cutterDiameterM() * input.revPerS() / likely.chatterHz();
      cautions.add(
          new Caution(
              Doubt.FLANK_DAMPING,
              text(
                  "%.0f waves of %.3f mm between two teeth; above %.0f a rubbing flank damps and"
                      + " the true limit is higher than given",
                  waves, waveM * 1e3, MANY_WAVES)));
    }
    if (likely.leastDepthM() >= StabilityLobes.CAP_M) {
      cautions.add(
          new Caution(
              Doubt.HARDLY_REGENERATES,
              text("no limit below %.0f m; forced vibration governs", StabilityLobes.CAP_M)));
    }
    return cautions;
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
