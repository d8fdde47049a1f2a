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
import java.util.function.Supplier;

/** A short secret text in a file that only its owner may read. */
record SecretFile(Path path) {

  private static final Set<PosixFilePermission> OWNER_ONLY =
      EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

  /** The text; created by {@code fresh} if there is no file yet. */
  String open(Supplier<String> fresh) {
    try {
      if (Files.notExists(path)) {
        make(fresh.get());
      }
      refuseOpenToOthers();
      return Files.readString(path, StandardCharsets.US_ASCII);
    } catch (IOException e) {
      throw new UncheckedIOException("Key file " + path, e);
    }
  }

  private void make(String secret) throws IOException {
    Path directory = Objects.requireNonNull(path.toAbsolutePath().getParent(), "directory");
    Files.createDirectories(directory);
    FileAttribute<?>[] attributes =
        posix(directory)
            ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
            : new FileAttribute<?>[0];
    // Written to a second file and moved, so that a crash cannot leave half a key.
    Path aside = Files.createTempFile(directory, "key", ".new", attributes);
    try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(secret.getBytes(StandardCharsets.US_ASCII)));
      channel.force(true);
    }
    Files.move(aside, path, StandardCopyOption.ATOMIC_MOVE);
  }

  private void refuseOpenToOthers() throws IOException {
    if (posix(path) && !OWNER_ONLY.containsAll(Files.getPosixFilePermissions(path))) {
      throw new IllegalStateException(
          "Key file " + path + " must be open to its owner only (chmod 600)");
    }
  }

  private static boolean posix(Path place) throws IOException {
    return Files.getFileStore(place).supportsFileAttributeView("posix");
  }
}
