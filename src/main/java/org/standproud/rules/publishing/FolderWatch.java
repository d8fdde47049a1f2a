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
 * Detects edits of the folder of cards. An editor writes several files and each in several steps,
 * so a change counts only once two checks in a row have seen the same. The first content is not a
 * change.
 */
public final class FolderWatch implements AutoCloseable {

  private final Path folder;
  private final Function<CardFolder.Contents, PublishResult> taking;
  private final WatchService events;
  private CardFolder.@Nullable Contents handled;
  private CardFolder.@Nullable Contents seen;

  /**
   * Starts to watch.
   *
   * @param folder the folder of cards
   * @param taking publishes the content of the folder once a change has settled
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
   * Checks the folder.
   *
   * @return the result for its cards, if they changed and have settled
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

  /** Whether the last check saw a change that has not settled. */
  public synchronized boolean unsettled() {
    return seen == null || !seen.equals(handled);
  }

  /** The content of the folder, or null if it cannot be read while it is being changed. */
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
   * @param sweep how often to check without a notification, for file systems that send none
   * @param results called with the result of each change
   */
  public void run(Duration rest, Duration sweep, Consumer<PublishResult> results) {
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
        lookSafely().ifPresent(results);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ClosedWatchServiceException e) {
      // Closing is the normal way to end the watch.
    }
  }

  /** No failure may end the watch. */
  private Optional<PublishResult> lookSafely() {
    try {
      return look();
    } catch (RuntimeException | Error e) {
      return Optional.of(new PublishResult.Failed(String.valueOf(e.getMessage())));
    }
  }

  /** While the folder is being replaced it may not exist. */
  private void registerWhatIsThere() {
    try {
      register();
    } catch (IOException e) {
      // The next check tries again.
    }
  }

  /** There may be new folders; registering one twice is harmless. */
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
