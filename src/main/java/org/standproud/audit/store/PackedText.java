package org.standproud.audit.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The text of a record as it lies in the database: UTF-8 in the zlib format (RFC 1950), at the
 * level that costs least. What is sealed is the text, so bytes that unpack to it are as good as any
 * other.
 */
final class PackedText {

  /** What is read where bytes do not unpack: no JSON, so that no seal and no record fits it. */
  static final String UNREADABLE = "(does not unpack)";

  private static final int PIECE_BYTES = 16_384;

  private PackedText() {}

  /** The bytes of a text. */
  static byte[] of(CanonicalJson text) {
    Deflater deflater = new Deflater(Deflater.BEST_SPEED);
    ByteArrayOutputStream packed = new ByteArrayOutputStream(PIECE_BYTES);
    try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater, PIECE_BYTES)) {
      text.writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException("Memory takes whatever is written", e);
    } finally {
      deflater.end(); // It holds memory outside of the heap.
    }
    return packed.toByteArray();
  }

  /** The text of bytes, {@link #UNREADABLE} where somebody has damaged them. */
  static String text(byte[] packed) {
    try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(packed))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return UNREADABLE;
    }
  }
}
