package org.standproud.shop;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.InitializingBean;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.standproud.refusal.LoggedFault;
import org.standproud.rules.gate.CardWarning;
import org.standproud.rules.publishing.FolderWatch;
import org.standproud.rules.publishing.PublishResult;
import org.standproud.shop.RulesProperties.FolderUse;

/**
 * Keeps the cards in service up to date: at start, after edits of the folder, and when another
 * replica publishes. Refused cards do not stop the service, which then reports why it is not ready.
 */
@Component
class ServedCards implements InitializingBean, DisposableBean {

  private static final Logger LOG = LoggerFactory.getLogger(ServedCards.class);
  private static final Duration REST = Duration.ofMillis(500);
  private static final Duration SWEEP = Duration.ofSeconds(10);

  private final RuleBaseHolder shelf;
  private final Path folder;
  private final FolderUse use;
  private @Nullable FolderWatch watch;
  private volatile PublishResult.@Nullable Refused lastRefused;

  ServedCards(RuleBaseHolder shelf, RulesProperties properties) {
    this.shelf = shelf;
    this.folder = properties.directory();
    this.use = properties.folder();
  }

  @Override
  public void afterPropertiesSet() throws IOException {
    log(shelf.follow());
    if (use == FolderUse.WATCH) {
      watch = new FolderWatch(folder, shelf::take);
    }
    if (use != FolderUse.NEVER) {
      log(shelf.load());
    }
    if (watch != null) {
      FolderWatch watching = watch;
      Thread thread = new Thread(() -> watching.run(REST, SWEEP, this::log), "rules-folder");
      thread.setDaemon(true);
      thread.start();
    }
  }

  /** Puts into service what another replica published. */
  @Scheduled(
      initialDelayString = "${standproud.rules.follow-every}",
      fixedDelayString = "${standproud.rules.follow-every}")
  void follow() {
    log(shelf.follow());
  }

  /** Logs a result; repeated refusals of the same cards are logged once. */
  private void log(PublishResult answer) {
    if (answer instanceof PublishResult.Published published) {
      LOG.info(
          "Rule base {} by {} is in service: {}",
          published.revision().id(),
          published.revision().revision().author(),
          published.revision().revision().note());
      published.warnings().stream()
          .filter(warning -> warning.kind() == CardWarning.Kind.STOP_WEAKENED)
          .forEach(warning -> LOG.warn("{}", LoggedFault.escaped(warning.toString())));
    } else if (answer instanceof PublishResult.Proposed proposed) {
      LOG.warn(
          "The cards of the folder wait for a second person to publish proposal {}",
          proposed.proposal().id());
    } else if (answer instanceof PublishResult.Refused refused && !refused.equals(lastRefused)) {
      refused.errors().forEach(error -> LOG.error("Cards refused: {}", error));
      lastRefused = refused;
    } else if (answer instanceof PublishResult.Failed failed) {
      LOG.error("The folder of cards could not be published: {}", failed.reason());
    }
  }

  @Override
  public void destroy() throws IOException {
    if (watch != null) {
      watch.close();
    }
  }
}
