package org.standproud;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.scheduling.config.ScheduledTaskHolder;

/** Timers of the service log any failure and run again. */
@IntegrationTest
@ExtendWith(OutputCaptureExtension.class)
class TimersTest {

  private @TempDir Path records;

  /** Runs on the service's own scheduler and fails in every way. */
  static class FailingTimer {

    private final AtomicInteger runs = new AtomicInteger();

    @Scheduled(fixedDelay = 1)
    void run() {
      switch (runs.incrementAndGet()) {
        case 1 -> throw new IllegalStateException("first failure");
        case 2 -> throw new StackOverflowError("second failure");
        case 3 -> throw new NoClassDefFoundError("third failure");
        default -> {}
      }
    }
  }

  @Test
  void aTimerThatFailsInAnyWayIsLoggedAndRunsAgain(CapturedOutput log) {
    try (ConfigurableApplicationContext service =
        new SpringApplicationBuilder(Standproud.class, FailingTimer.class)
            .run(
                "--server.port=0",
                "--spring.main.banner-mode=off",
                "--logging.level.root=WARN",
                "--standproud.audit.directory=" + records,
                "--standproud.rules.directory=rules")) {
      AtomicInteger runs = service.getBean(FailingTimer.class).runs;
      await().atMost(Duration.ofSeconds(30)).until(() -> runs.get() > 4);
      assertThat(log)
          .contains("IllegalStateException: first failure")
          .contains("StackOverflowError: second failure")
          .contains("NoClassDefFoundError: third failure");
      assertThat(timers(service))
          .as("timers on this scheduler")
          .contains(
              "org.standproud.audit.records.Records.checkpoint",
              "org.standproud.assessment.retention.ScheduledRetention.keepTheRule",
              "org.standproud.access.journal.AccessJournal.writeDenied",
              "org.standproud.shop.ServedCards.follow");
    }
  }

  private static List<String> timers(ConfigurableApplicationContext service) {
    return service.getBeansOfType(ScheduledTaskHolder.class).values().stream()
        .flatMap(holder -> holder.getScheduledTasks().stream())
        .map(Object::toString)
        .toList();
  }

  @Test
  void theServiceHasNoTimerOfAnotherKind() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .areAssignableTo(ScheduledExecutorService.class)
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(java.util.Timer.class)
        .check(
            new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.standproud"));
  }
}
