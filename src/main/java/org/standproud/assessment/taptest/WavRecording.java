package org.standproud.assessment.taptest;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.taptest.TapRecording;

/** Reads a WAV file of whole numbers: 8 to 32 bits, the mean of its channels. */
final class WavRecording {

  private static final int MOST_CHANNELS = 8;

  private WavRecording() {}

  /**
   * The recording in a file.
   *
   * @param file a WAV file (RIFF, PCM)
   * @throws UnreadableRecordingException if it is not one, or too short, too long or sampled too
   *     slowly or too quickly
   */
  static TapRecording read(byte[] file) {
    try (AudioInputStream sound = AudioSystem.getAudioInputStream(new ByteArrayInputStream(file))) {
      AudioFormat format = sound.getFormat();
      boolean signed = format.getEncoding() == AudioFormat.Encoding.PCM_SIGNED;
      boolean unsigned = format.getEncoding() == AudioFormat.Encoding.PCM_UNSIGNED;
      int bytes = format.getSampleSizeInBits() / 8;
      int channels = format.getChannels();
      if (!(signed || unsigned && bytes == 1)
          || bytes < 1
          || bytes > Integer.BYTES
          || channels < 1
          || channels > MOST_CHANNELS
          || format.getFrameSize() != bytes * channels) {
        throw new UnreadableRecordingException(
            "A WAV file of whole numbers is wanted, 8 to 32 bits, 1 to 8 channels; this one is "
                + format
                + ".");
      }
      ByteBuffer data =
          ByteBuffer.wrap(sound.readAllBytes())
              .order(format.isBigEndian() ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
      double[] samples = new double[data.limit() / (bytes * channels)];
      for (int i = 0; i < samples.length; i++) {
        double sum = 0;
        for (int channel = 0; channel < channels; channel++) {
          sum += sample(data, (i * channels + channel) * bytes, bytes) - (unsigned ? 128 : 0);
        }
        samples[i] = sum / channels;
      }
      return new TapRecording(samples, format.getSampleRate());
    } catch (UnsupportedAudioFileException | IOException e) {
      throw new UnreadableRecordingException(
          "A WAV file is wanted, and this cannot be read as one.");
    } catch (OutsideValidity e) {
      throw new UnreadableRecordingException(
          "The recording cannot be used: " + e.getMessage() + ".");
    }
  }

  private static double sample(ByteBuffer data, int at, int bytes) {
    return switch (bytes) {
      case 1 -> data.get(at) & 0xff;
      case 2 -> data.getShort(at);
      case 3 ->
          data.order() == ByteOrder.BIG_ENDIAN
              ? data.get(at) << 16 | (data.get(at + 1) & 0xff) << 8 | data.get(at + 2) & 0xff
              : data.get(at + 2) << 16 | (data.get(at + 1) & 0xff) << 8 | data.get(at) & 0xff;
      default -> data.getInt(at);
    };
  }
}
