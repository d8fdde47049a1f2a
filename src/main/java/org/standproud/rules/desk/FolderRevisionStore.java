package org.standproud.rules.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * Revisions in a folder that replicas may share: {@code cards/} holds each text under its hash,
 * {@code revisions/} one file a revision, named for its number, {@code proposals/} what waits. A
 * file is written beside its place, forced to disk, and put in its place in one step, so a reader
 * never sees half of one. A revision is put in its place by a link, which fails if the number is
 * taken: of two replicas that publish at once, one is told to look again.
 */
public final class FolderRevisionStore implements RevisionStore {

  private static final JsonMapper JSON = JsonMapper.shared();
  private static final String END = ".json";

  private final Path cards;
  private final Path revisions;
  private final Path proposals;

  /**
   * Opens the folder, making it if it is not there.
   *
   * @param folder the folder
   * @throws UncheckedIOException if it cannot be made
   */
  public FolderRevisionStore(Path folder) {
    cards = folder.resolve("cards");
    revisions = folder.resolve("revisions");
    proposals = folder.resolve("proposals");
    try {
      for (Path path : List.of(cards, revisions, proposals)) {
        Files.createDirectories(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public List<StoredRevision> revisions() {
    List<StoredRevision> all = new ArrayList<>();
    for (Path file : files(revisions)) {
      StoredRevision revision = read(file, StoredRevision.class);
      if (!file.getFileName().toString().equals(name(revision.number()))) {
        throw new StoreDamaged(file.getFileName() + " holds another revision");
      }
      all.add(revision);
    }
    return all;
  }

  @Override
  public Optional<StoredRevision> latest() {
    List<Path> files = files(revisions);
    return files.isEmpty()
        ? Optional.empty()
        : Optional.of(read(files.get(files.size() - 1), StoredRevision.class));
  }

  @Override
  public boolean append(StoredRevision revision, Collection<String> texts) {
    Optional<StoredRevision> latest = latest();
    long next = latest.map(StoredRevision::number).orElse(0L) + 1;
    String parent = latest.map(StoredRevision::id).orElse("");
    if (revision.number() != next
        || !parent.equals(revision.parent() == null ? "" : revision.parent())) {
      return false;
    }
    texts.forEach(this::keepText);
    try {
      Path written = write(revisions, JSON.writeValueAsString(revision));
      try {
        Files.createLink(revisions.resolve(name(next)), written);
      } catch (FileAlreadyExistsException e) {
        return false;
      } finally {
        Files.delete(written);
      }
      force(revisions);
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String name(long number) {
    return String.format(Locale.ROOT, "%08d", number) + END;
  }

  @Override
  public String text(String hash) {
    if (!hash.matches("[0-9a-f]{64}")) {
      throw new StoreDamaged("\"" + hash + "\" is not the hash of a card");
    }
    try {
      String text = Files.readString(cards.resolve(hash));
      if (!TextHash.of(text).equals(hash)) {
        throw new StoreDamaged("the card kept as " + hash + " was changed");
      }
      return text;
    } catch (NoSuchFileException e) {
      throw new StoreDamaged("the card kept as " + hash + " is gone");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void keepText(String text) {
    Path place = cards.resolve(TextHash.of(text));
    if (!Files.exists(place)) {
      put(cards, place, text);
    }
  }

  @Override
  public List<Proposal> proposals() {
    return files(proposals).stream()
        .map(file -> read(file, Proposal.class))
        .sorted(Comparator.comparing(Proposal::time).thenComparing(Proposal::id))
        .toList();
  }

  @Override
  public void keep(Proposal proposal, Collection<String> texts) {
    texts.forEach(this::keepText);
    put(proposals, place(proposal.id()), JSON.writeValueAsString(proposal));
  }

  @Override
  public void drop(String proposal) {
    try {
      Files.deleteIfExists(place(proposal));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Path place(String proposal) {
    return proposals.resolve(UUID.fromString(proposal) + END);
  }

  private static List<Path> files(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.getFileName().toString().endsWith(END)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static <T> T read(Path file, Class<T> type) {
    try {
      return JSON.readValue(Files.readString(file), type);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (JacksonException e) {
      throw new StoreDamaged(file.getFileName() + " cannot be read");
    }
  }

  private static void put(Path folder, Path place, String text) {
    try {
      Files.move(
          write(folder, text),
          place,
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
      force(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes a text to disk under a name nobody looks for. */
  private static Path write(Path folder, String text) throws IOException {
    Path path = Files.createTempFile(folder, ".", ".part");
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
    return path;
  }

  /**
   * A name is on disk only once its folder is; where folders cannot be opened the system sees to
   * it.
   */
  private static void force(Path folder) throws IOException {
    if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }
}
