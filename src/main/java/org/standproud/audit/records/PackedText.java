package org.standproud.audit.records;

import com.github.luben.zstd.Zstd;
import com.github.luben.zstd.ZstdDictCompress;
import com.github.luben.zstd.ZstdDictDecompress;
import com.github.luben.zstd.ZstdInputStreamNoFinalizer;
import com.github.luben.zstd.util.Native;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import org.standproud.audit.canonical.CanonicalJson;

/**
 * The stored text of a record: UTF-8 compressed as Zstandard (RFC 8878) with a dictionary, without
 * one in records before version 0.5, or as zlib (RFC 1950) in still earlier ones; the first bytes
 * distinguish them. The seal covers the text, so any bytes that unpack to it are valid.
 */
final class PackedText {

  /** The result for bytes that do not unpack: not JSON, so that no seal and no record fits it. */
  static final String UNREADABLE = "(does not unpack)";

  /** Half the bytes of the fastest level in little more time. */
  private static final int LEVEL = 3;

  /** Three times as long for four fifths of the bytes: for the few records of many findings. */
  private static final int HARDER = 6;

  private static final int WANTED_BYTES = 8 * 1024;

  /** RFC 1950 section 2.2: the method, and the default window of zlib. */
  private static final byte ZLIB = 0x78;

  private PackedText() {}

  /**
   * Every dictionary that a record was ever packed with, oldest first; the last one packs. A
   * dictionary never changes: its records could not be read again.
   */
  private enum Dictionary {
    FIRST("record-1.dictionary");

    private static final Dictionary NEWEST = values()[values().length - 1];

    private final long id;
    private final ZstdDictCompress packing;
    private final ZstdDictCompress harder;
    private final ZstdDictDecompress unpacking;

    Dictionary(String file) {
      byte[] content = read(file);
      id = Zstd.getDictIdFromDict(content);
      packing = new ZstdDictCompress(content, LEVEL);
      harder = new ZstdDictCompress(content, HARDER);
      unpacking = new ZstdDictDecompress(content);
    }

    private static byte[] read(String file) {
      try (InputStream in = PackedText.class.getResourceAsStream(file)) {
        return Objects.requireNonNull(in, file).readAllBytes();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    static Optional<Dictionary> of(byte[] packed) {
      long id = Zstd.getDictIdFromFrame(packed);
      return Arrays.stream(values()).filter(one -> one.id == id).findFirst();
    }
  }

  /**
   * Loads the native compression library and the dictionaries: if one is missing, the service
   * should report that at start and not at its first answer.
   *
   * @throws LinkageError if there is no library for this machine, or java.io.tmpdir does not allow
   *     running it
   */
  static void load() {
    Native.load();
    of(new CanonicalJson("null"));
  }

  /** Compresses a text. */
  static byte[] of(CanonicalJson text) {
    byte[] utf8 = text.utf8();
    byte[] packed = Zstd.compress(utf8, Dictionary.NEWEST.packing);
    return packed.length <= WANTED_BYTES ? packed : Zstd.compress(utf8, Dictionary.NEWEST.harder);
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
    if (packed[0] == ZLIB) {
      return new InflaterInputStream(bytes);
    }
    ZstdInputStreamNoFinalizer in = new ZstdInputStreamNoFinalizer(bytes);
    Optional<Dictionary> dictionary = Dictionary.of(packed);
    if (dictionary.isPresent()) {
      in.setDict(dictionary.get().unpacking);
    }
    return in;
  }
}
