package org.standproud.mechanics.taptest;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.complex.Complex;
import org.hipparchus.stat.regression.SimpleRegression;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;

/**
 * A recording of taps on a part: sound, acceleration or any other signal that swings as the part
 * does.
 *
 * <p>Each tap is cut out from its blow to the next. The strongest peak of its spectrum is the note;
 * the signal about it, {@value #BAND} of the frequency to either side, is made analytic (transform
 * without negative frequencies), its size is the envelope. The logarithm of the envelope falls on a
 * straight line of slope {@code -zeta omega} (logarithmic decrement {@code delta = 2 pi zeta/sqrt(1
 * - zeta^2)}, ISO 18431-3 for the transform, any textbook of vibration for the decrement), its
 * phase rises by {@code omega_d} (both by least squares from {@value #AFTER_CYCLES} cycles after
 * the blow down to the noise). A decay is clear if it keeps to the line, falls by at least half in
 * the time looked at and stands out from the rest of the spectrum; taps that are not clear are left
 * out, and taps that disagree are no measurement.
 *
 * @param samples the signal, any unit, 256 to 4194304 values
 * @param ratePerS samples a second, 1000 to 400000
 */
public record TapRecording(double[] samples, double ratePerS) {

  /** Lowest note that can be looked for, Hz. */
  public static final double LOWEST_HZ = 5;

  /** Highest note that can be looked for, as a part of the sampling rate. */
  public static final double HIGHEST = 0.45;

  private static final double BAND = 0.25;
  private static final int AFTER_CYCLES = 2;

  /** Least cycles of a decay to be called one. */
  private static final double LEAST_CYCLES = 6;

  /** A blow rises at least so high above the quiet part of the recording. */
  private static final double BLOW_OVER_QUIET = 6;

  /** A note stands out from the middle of the spectrum by so much in size. */
  private static final double NOTE_OVER_REST = 8;

  /** Least share of the variance of the logarithm that the line explains. */
  private static final double STRAIGHT = 0.9;

  /** Greatest spread of the frequencies of taps over their mean. */
  private static final double AGREE = 0.03;

  /** Taps closer than this are one, s. */
  private static final double APART_S = 0.08;

  /**
   * Copies the samples.
   *
   * @throws OutsideValidity if there are too few or too many, one is not finite or the rate is out
   *     of range
   */
  public TapRecording {
    samples = samples.clone();
    within("samples", samples.length, 256, 4194304, "");
    within("sampling rate", ratePerS, 1000, 400000, "1/s");
    for (double sample : samples) {
      within("sample", sample, -1e12, 1e12, "");
    }
  }

  /** The samples, copied. */
  @Override
  public double[] samples() {
    return samples.clone();
  }

  /** The result of a recording. */
  public sealed interface Finding {}

  /**
   * A note with its damping.
   *
   * @param frequencyHz natural frequency, undamped, mean of the taps, Hz
   * @param frequencyErrorHz standard error of it, Hz, at least that of a thousandth
   * @param dampingRatio damping over critical, mean of the taps
   * @param dampingError standard error of it, at least a tenth
   * @param taps how many taps were clear
   */
  public record Note(
      double frequencyHz,
      double frequencyErrorHz,
      double dampingRatio,
      double dampingError,
      int taps)
      implements Finding {}

  /**
   * Nothing to be measured here.
   *
   * @param reason why
   */
  public record Unclear(Reason reason) implements Finding {}

  /** Why a recording holds no measurement. */
  public enum Reason {
    /** Nothing rises above the noise. */
    NO_TAP,
    /** No note stands out, or it does not die away along one line. */
    NO_CLEAR_DECAY,
    /** The taps ring at different notes. */
    TAPS_DISAGREE
  }

  private record Decay(double hz, double zeta) {}

  /**
   * Finds the note.
   *
   * @param lowestHz lowest frequency looked for, Hz, 5 up
   * @param highestHz highest frequency looked for, Hz, up to 0.45 of the sampling rate
   * @throws OutsideValidity if the range is empty or beyond what the rate can show
   */
  public Finding note(double lowestHz, double highestHz) {
    within("lowest frequency", lowestHz, LOWEST_HZ, HIGHEST * ratePerS, "Hz");
    within("highest frequency", highestHz, lowestHz, HIGHEST * ratePerS, "Hz");
    double[] centred = centred();
    List<Integer> blows = blows(centred);
    if (blows.isEmpty()) {
      return new Unclear(Reason.NO_TAP);
    }
    List<Decay> decays = new ArrayList<>();
    for (int i = 0; i < blows.size(); i++) {
      int to = i + 1 < blows.size() ? blows.get(i + 1) - (int) (0.005 * ratePerS) : centred.length;
      Decay decay = decay(Arrays.copyOfRange(centred, blows.get(i), to), lowestHz, highestHz);
      if (decay != null) {
        decays.add(decay);
      }
    }
    if (decays.isEmpty()) {
      return new Unclear(Reason.NO_CLEAR_DECAY);
    }
    double[] hz = decays.stream().mapToDouble(Decay::hz).toArray();
    double[] zeta = decays.stream().mapToDouble(Decay::zeta).toArray();
    double f = Arrays.stream(hz).average().orElseThrow();
    if (Arrays.stream(hz).anyMatch(one -> Math.abs(one / f - 1) > AGREE)) {
      return new Unclear(Reason.TAPS_DISAGREE);
    }
    double z = Arrays.stream(zeta).average().orElseThrow();
    return new Note(
        f, Math.max(1e-3 * f, error(hz, f)), z, Math.max(0.1 * z, error(zeta, z)), decays.size());
  }

  private static double error(double[] values, double mean) {
    double sum = 0;
    for (double v : values) {
      sum += (v - mean) * (v - mean);
    }
    int n = values.length;
    return n < 2 ? 0 : Math.sqrt(sum / (n - 1) / n);
  }

  private double[] centred() {
    double mean = Arrays.stream(samples).average().orElseThrow();
    return Arrays.stream(samples).map(v -> v - mean).toArray();
  }

  /** Where taps begin: the envelope jumps above the quiet part and above a part of the loudest. */
  private List<Integer> blows(double[] signal) {
    int step = Math.max(8, (int) (0.002 * ratePerS));
    int blocks = signal.length / step;
    double[] loud = new double[blocks];
    for (int b = 0; b < blocks; b++) {
      for (int i = b * step; i < (b + 1) * step; i++) {
        loud[b] = Math.max(loud[b], Math.abs(signal[i]));
      }
    }
    double[] sorted = loud.clone();
    Arrays.sort(sorted);
    double quiet = sorted[blocks / 10];
    double loudest = sorted[blocks - 1];
    List<Integer> blows = new ArrayList<>();
    if (loudest <= 0 || loudest < BLOW_OVER_QUIET * quiet) {
      return blows;
    }
    double level = Math.max(0.3 * loudest, BLOW_OVER_QUIET * quiet);
    int last = -blocks;
    int apart = Math.max(1, (int) (APART_S * ratePerS / step));
    for (int b = 0; b < blocks; b++) {
      boolean rises = b == 0 || loud[b] > 1.5 * loud[b - 1];
      if (loud[b] >= level && rises && b - last >= apart) {
        blows.add(peakIn(signal, b * step, Math.min(signal.length, (b + 2) * step)));
        last = b;
      }
    }
    return blows;
  }

  private static int peakIn(double[] signal, int from, int to) {
    int at = from;
    for (int i = from; i < to; i++) {
      if (Math.abs(signal[i]) > Math.abs(signal[at])) {
        at = i;
      }
    }
    return at;
  }

  private @Nullable Decay decay(double[] tap, double lowestHz, double highestHz) {
    if (tap.length < 64) {
      return null;
    }
    int size = Integer.highestOneBit(2 * tap.length - 1) * 2;
    double[] padded = Arrays.copyOf(tap, size);
    FastFourierTransformer fourier = new FastFourierTransformer(DftNormalization.STANDARD);
    Complex[] spectrum = fourier.transform(padded, TransformType.FORWARD);
    double perBin = ratePerS / size;
    int low = Math.max(1, (int) Math.ceil(lowestHz / perBin));
    int high = Math.min(size / 2 - 1, (int) (highestHz / perBin));
    if (high - low < 4) {
      return null;
    }
    double[] sizes = new double[high - low + 1];
    int peak = low;
    for (int i = low; i <= high; i++) {
      sizes[i - low] = spectrum[i].norm();
      if (sizes[i - low] > sizes[peak - low]) {
        peak = i;
      }
    }
    double highest = sizes[peak - low];
    Arrays.sort(sizes);
    if (highest < NOTE_OVER_REST * sizes[sizes.length / 2]) {
      return null;
    }
    double hz = peak * perBin;
    int from = (int) Math.max(1, (1 - BAND) * hz / perBin);
    int to = (int) Math.min(size / 2 - 1, (1 + BAND) * hz / perBin);
    Complex[] band = new Complex[size];
    Arrays.fill(band, Complex.ZERO);
    for (int i = from; i <= to; i++) {
      // A cosine flank over the outer fifths keeps the filter from ringing itself.
      double off = Math.abs(i - peak) / (BAND * peak);
      double weight = off < 0.6 ? 1 : 0.5 * (1 + Math.cos(Math.PI * (off - 0.6) / 0.4));
      band[i] = spectrum[i].multiply(2 * Math.max(0, weight));
    }
    return line(fourier.transform(band, TransformType.INVERSE), tap.length, hz);
  }

  /** Slope of logarithm and phase of an analytic signal along its decay. */
  private @Nullable Decay line(Complex[] signal, int length, double hz) {
    int cycle = (int) Math.max(1, ratePerS / hz);
    int from = AFTER_CYCLES * cycle;
    // The filter smears over the reciprocal of its width at either end.
    int end = length - 4 * cycle;
    if (end - from < LEAST_CYCLES * cycle) {
      return null;
    }
    double[] envelope = new double[end];
    for (int i = 0; i < end; i++) {
      envelope[i] = signal[i].norm();
    }
    double start = envelope[from];
    int tail = Math.max(from + 1, end - Math.max(4 * cycle, (end - from) / 10));
    double noise = 0;
    for (int i = tail; i < end; i++) {
      noise += envelope[i] / (end - tail);
    }
    double floor = Math.max(3 * noise, start / 1000);
    int to = from;
    while (to < end && envelope[to] > floor) {
      to++;
    }
    if (to - from < LEAST_CYCLES * cycle || envelope[to - 1] > 0.5 * start) {
      // A decay too slow for the record still counts if it falls by half in it.
      to = end;
      if (envelope[end - 1] > 0.5 * start || to - from < LEAST_CYCLES * cycle) {
        return null;
      }
    }
    SimpleRegression log = new SimpleRegression();
    SimpleRegression phase = new SimpleRegression();
    double turned = signal[from].getArgument();
    double before = turned;
    int every = Math.max(1, cycle / 16);
    for (int i = from; i < to; i++) {
      double argument = signal[i].getArgument();
      double moved = argument - before;
      turned += moved - 2 * Math.PI * Math.rint(moved / (2 * Math.PI));
      before = argument;
      if ((i - from) % every == 0) {
        log.addData(i / ratePerS, Math.log(envelope[i]));
        phase.addData(i / ratePerS, turned);
      }
    }
    double sigma = -log.getSlope();
    double omega = phase.getSlope();
    if (!(log.getRSquare() >= STRAIGHT) || !(sigma > 0) || !(omega > 0)) {
      return null;
    }
    double natural = Math.hypot(sigma, omega);
    return new Decay(natural / (2 * Math.PI), sigma / natural);
  }
}
