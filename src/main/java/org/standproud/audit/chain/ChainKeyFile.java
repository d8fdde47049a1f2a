package org.standproud.audit.chain;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * Keeps the chain key in a file that only its owner may read.
 *
 * @param path where the key lies; the directory above it is made when missing
 */
public record ChainKeyFile(Path path) {

  private static final Set<PosixFilePermission> OWNER_ONLY =
      EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

  /**
   * Reads the key, making it on the first start.
   *
   * @return the key
   * @throws IllegalStateException when others than the owner may read the file
   * @throws IllegalArgumentException when the file holds no key
   * @throws UncheckedIOException when the file cannot be read or made
   */
  public ChainKey open() {
    try {
      if (Files.notExists(path)) {
        make();
      }
      refuseOpenToOthers();
      return ChainKey.of(Files.readString(path, StandardCharsets.US_ASCII));
    } catch (IOException e) {
      throw new UncheckedIOException("Chain key file " + path, e);
    }
  }

  private void make() throws IOException {
    Path directory = Objects.requireNonNull(path.toAbsolutePath().getParent(), "directory");
    Files.createDirectories(directory);
    FileAttribute<?>[] attributes =
        posix(directory)
            ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
            : new FileAttribute<?>[0];
    // Written aside and moved, so that a crash cannot leave half a key.
    Path aside = Files.createTempFile(directory, "chain", ".new", attributes);
    try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(ChainKey.fresh().getBytes(StandardCharsets.US_ASCII)));
      channel.force(true);
    }
    Files.move(aside, path, StandardCopyOption.ATOMIC_MOVE);
  }

  private void refuseOpenToOthers() throws IOException {
    if (posix(path) && !OWNER_ONLY.containsAll(Files.getPosixFilePermissions(path))) {
      throw new IllegalStateException(
          "Chain key file " + path + " must be open to its owner only (chmod 600)");
    }
  }

  private static boolean posix(Path place) throws IOException {
    return Files.getFileStore(place).supportsFileAttributeView("posix");
  }
}
