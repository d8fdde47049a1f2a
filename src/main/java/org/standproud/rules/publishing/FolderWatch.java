package org.standproud.rules.publishing;

import static java.nio.file.StandardWatchEventKinds.ENTRY_CREATE;
import static java.nio.file.StandardWatchEventKinds.ENTRY_DELETE;
import static java.nio.file.StandardWatchEventKinds.ENTRY_MODIFY;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.gate.CardFolder;

/**
 * Sees when the folder of cards was edited. An editor writes several files and each in several
 * steps, so a change counts only once two looks in a row have seen the same. What the folder held
 * when the watch began is not taken for a change.
 */
public final class FolderWatch implements AutoCloseable {

  private final Path folder;
  private final Function<CardFolder.Contents, PublishResult> taking;
  private final WatchService events;
  private CardFolder.@Nullable Contents handled;
  private CardFolder.@Nullable Contents seen;

  /**
   * Begins to watch.
   *
   * @param folder the folder of cards
   * @param taking takes what the folder holds once a change has come to rest
   * @throws IOException if its file system cannot be watched
   */
  public FolderWatch(Path folder, Function<CardFolder.Contents, PublishResult> taking)
      throws IOException {
    this.folder = folder;
    this.taking = taking;
    this.events = folder.getFileSystem().newWatchService();
    this.handled = contents();
    this.seen = handled;
    registerWhatIsThere();
  }

  /**
   * Looks at the folder.
   *
   * @return what became of its cards, if they changed and have come to rest
   */
  public synchronized Optional<PublishResult> look() {
    CardFolder.Contents now = contents();
    boolean rest = now != null && now.equals(seen);
    seen = now;
    if (now == null || !rest || now.equals(handled)) {
      return Optional.empty();
    }
    handled = now;
    return Optional.of(taking.apply(now));
  }

  /** Whether the last look saw a change that has not come to rest. */
  public synchronized boolean unsettled() {
    return seen == null || !seen.equals(handled);
  }

  /** What the folder holds, or null while it cannot be read because it is being changed. */
  private CardFolder.@Nullable Contents contents() {
    try {
      return CardFolder.read(folder);
    } catch (UncheckedIOException e) {
      return null;
    }
  }

  /**
   * Watches until closed or interrupted.
   *
   * @param rest how long nothing may happen before a change counts
   * @param sweep how often to look although nothing happened, for file systems that tell nothing
   * @param told told what became of each change
   */
  public void run(Duration rest, Duration sweep, Consumer<PublishResult> told) {
    try {
      while (true) {
        Duration wait = unsettled() ? rest : sweep;
        WatchKey key = events.poll(wait.toMillis(), TimeUnit.MILLISECONDS);
        while (key != null) {
          key.pollEvents();
          key.reset();
          key = events.poll();
        }
        registerWhatIsThere();
        lookSafely().ifPresent(told);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ClosedWatchServiceException e) {
      // Closing is how the watch is meant to end.
    }
  }

  /** A store that fails once must not end the watch. */
  private Optional<PublishResult> lookSafely() {
    try {
      return look();
    } catch (RuntimeException e) {
      return Optional.of(new PublishResult.Failed(String.valueOf(e.getMessage())));
    }
  }

  /** While the folder is being put in another's place it may not be there. */
  private void registerWhatIsThere() {
    try {
      register();
    } catch (IOException e) {
      // The next sweep looks again.
    }
  }

  /** Folders may have come since; one that is watched already stays so. */
  private void register() throws IOException {
    try (Stream<Path> paths = Files.walk(folder, 2)) {
      for (Path path : paths.filter(Files::isDirectory).toList()) {
        path.register(events, ENTRY_CREATE, ENTRY_MODIFY, ENTRY_DELETE);
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  @Override
  public void close() throws IOException {
    events.close();
  }
}
