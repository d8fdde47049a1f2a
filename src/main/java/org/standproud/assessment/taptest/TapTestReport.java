package org.standproud.assessment.taptest;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.standproud.advice.Cautions;
import org.standproud.mechanics.taptest.TapRecording;
import org.standproud.refusal.BadParameterException;

/**
 * Note and damping found in a recording of taps. The two ranges go into the request of a set-up as
 * they are.
 *
 * @param measuredNote the note as {@code /hold/measuredNote}: two standard errors to either side
 * @param measuredDamping the damping ratio as {@code /hold/measuredDamping}, likewise
 * @param taps how many taps were clear; the mean of them is taken
 * @param cautions the cautions of every answer; show them
 */
public record TapTestReport(
    NoteRange measuredNote, DampingRange measuredDamping, int taps, List<String> cautions) {

  private static final double ERRORS = 2;

  /** Least and greatest damping ratio that a set-up may state. */
  private static final double LEAST_DAMPING = 0.0005;

  private static final double MOST_DAMPING = 0.3;

  /**
   * A range of frequency.
   *
   * @param low lower end
   * @param high upper end
   * @param unit Hz
   */
  public record NoteRange(double low, double high, String unit) {}

  /**
   * A range of damping over critical.
   *
   * @param low lower end
   * @param high upper end
   */
  public record DampingRange(double low, double high) {}

  /**
   * Analyses a recording.
   *
   * @param wav a WAV file
   * @param lowestHz lowest note looked for, Hz
   * @param highestHz highest note looked for, Hz
   * @throws UnreadableRecordingException if it cannot be read or holds no clear decay
   * @throws BadParameterException if the recording cannot show such notes
   */
  public static TapTestReport of(byte[] wav, double lowestHz, double highestHz) {
    TapRecording recording = WavRecording.read(wav);
    double most = TapRecording.HIGHEST * recording.ratePerS();
    if (!(lowestHz >= TapRecording.LOWEST_HZ && lowestHz < highestHz)) {
      throw new BadParameterException(
          "lowest", "from " + (int) TapRecording.LOWEST_HZ + " Hz, and below highest");
    }
    if (highestHz > most) {
      throw new BadParameterException(
          "highest", "at most " + (int) most + " Hz, as far as this recording is sampled");
    }
    TapRecording.Finding finding = recording.note(lowestHz, highestHz);
    if (finding instanceof TapRecording.Unclear unclear) {
      throw new UnreadableRecordingException(why(unclear.reason()));
    }
    TapRecording.Note note = (TapRecording.Note) finding;
    return new TapTestReport(
        new NoteRange(
            rounded(note.frequencyHz() - ERRORS * note.frequencyErrorHz(), 4),
            rounded(note.frequencyHz() + ERRORS * note.frequencyErrorHz(), 4),
            "Hz"),
        new DampingRange(
            Math.max(LEAST_DAMPING, rounded(note.dampingRatio() - ERRORS * note.dampingError(), 3)),
            Math.min(MOST_DAMPING, rounded(note.dampingRatio() + ERRORS * note.dampingError(), 3))),
        note.taps(),
        Cautions.all());
  }

  private static String why(TapRecording.Reason reason) {
    return switch (reason) {
      case NO_TAP ->
          "No tap stands out of the noise. Hold the microphone near the plate, tap it harder, and"
              + " leave a second between taps.";
      case NO_CLEAR_DECAY ->
          "No note dies away clearly after a tap. Tap the end of the top edge with something hard,"
              + " and let the plate ring out.";
      case TAPS_DISAGREE ->
          "The taps ring at different notes. Tap the same place each time, and check that the plate"
              + " is tight.";
    };
  }

  /** To so many figures, which are finer than the measurement. */
  private static double rounded(double value, int figures) {
    return new BigDecimal(value).round(new MathContext(figures)).doubleValue();
  }
}
