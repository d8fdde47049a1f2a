package org.standproud.audit.records;

import com.github.luben.zstd.ZstdInputStreamNoFinalizer;
import com.github.luben.zstd.ZstdOutputStreamNoFinalizer;
import com.github.luben.zstd.util.Native;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.InflaterInputStream;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The text of a record as it lies in the database: UTF-8 in the Zstandard format (RFC 8878), or in
 * the zlib format (RFC 1950) in records of earlier versions; the first byte tells which. What is
 * sealed is the text, so bytes that unpack to it are as good as any other.
 */
final class PackedText {

  /** What is read where bytes do not unpack: no JSON, so that no seal and no record fits it. */
  static final String UNREADABLE = "(does not unpack)";

  private static final int PIECE_BYTES = 16_384;

  /** Packs a record in a third of the time of zlib's quickest level, and into fewer bytes. */
  private static final int LEVEL = 1;

  /** RFC 1950 section 2.2: the method, and the window that every zlib takes if not told another. */
  private static final byte ZLIB = 0x78;

  private PackedText() {}

  /**
   * Loads what packs, which is a library of the machine's own: where it cannot be, the service
   * should say so when it starts and not at its first answer.
   *
   * @throws LinkageError if there is none for this machine, or java.io.tmpdir forbids running it
   */
  static void load() {
    Native.load();
  }

  /** The bytes of a text. */
  static byte[] of(CanonicalJson text) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream(PIECE_BYTES);
    try (OutputStream out = new ZstdOutputStreamNoFinalizer(packed, LEVEL)) {
      text.writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException("Memory takes whatever is written", e);
    }
    return packed.toByteArray();
  }

  /** The text of bytes, {@link #UNREADABLE} where somebody has damaged them. */
  static String text(byte[] packed) {
    if (packed.length == 0) {
      return UNREADABLE;
    }
    try (InputStream in = unpacking(packed)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return UNREADABLE;
    }
  }

  private static InputStream unpacking(byte[] packed) throws IOException {
    InputStream bytes = new ByteArrayInputStream(packed);
    return packed[0] == ZLIB
        ? new InflaterInputStream(bytes)
        : new ZstdInputStreamNoFinalizer(bytes);
  }
}
