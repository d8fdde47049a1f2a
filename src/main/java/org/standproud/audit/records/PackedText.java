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
 * The stored text of a record: UTF-8 compressed as Zstandard (RFC 8878), or as zlib (RFC 1950) in
 * records of earlier versions; the first byte distinguishes them. The seal covers the text, so any
 * bytes that unpack to it are valid.
 */
final class PackedText {

  /** The result for bytes that do not unpack: not JSON, so that no seal and no record fits it. */
  static final String UNREADABLE = "(does not unpack)";

  private static final int PIECE_BYTES = 16_384;

  /** Compresses a record in a third of the time of zlib's fastest level, to fewer bytes. */
  private static final int LEVEL = 1;

  /** RFC 1950 section 2.2: the method, and the default window of zlib. */
  private static final byte ZLIB = 0x78;

  private PackedText() {}

  /**
   * Loads the native compression library: if it is missing, the service should report that at start
   * and not at its first answer.
   *
   * @throws LinkageError if there is none for this machine, or java.io.tmpdir does not allow
   *     running it
   */
  static void load() {
    Native.load();
  }

  /** Compresses a text. */
  static byte[] of(CanonicalJson text) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream(PIECE_BYTES);
    try (OutputStream out = new ZstdOutputStreamNoFinalizer(packed, LEVEL)) {
      text.writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException("Writing to memory does not fail", e);
    }
    return packed.toByteArray();
  }

  /** The text of the bytes, {@link #UNREADABLE} if they are damaged. */
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
