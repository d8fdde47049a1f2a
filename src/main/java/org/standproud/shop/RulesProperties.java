package org.standproud.shop;

import java.nio.file.Path;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.util.unit.DataSize;
import org.standproud.settings.SettingRefused;

/**
 * The rule cards.
 *
 * @param directory the cards as files: where they come from first, and one way to edit them;
 *     revisions are kept with the records
 * @param folder when the folder is read: never, start (and when POST /v1/rules/reload asks for it)
 *     or watch
 * @param twoPersons whether another person than the author has to publish: true, false, or stops
 *     for cards that remove or weaken a stop; empty means stops where callers show keys, else false
 * @param followEvery how soon what another replica published serves here too
 * @param largestEdit most characters in a change of cards sent to the service
 * @param impact how past jobs are judged again
 */
@ConfigurationProperties("standproud.rules")
public record RulesProperties(
    Path directory,
    FolderUse folder,
    @Nullable TwoPersons twoPersons,
    Duration followEvery,
    DataSize largestEdit,
    Impact impact) {

  /** Checks the values. */
  public RulesProperties {
    SettingRefused.given("standproud.rules.directory", directory, "A folder has to be named.");
    SettingRefused.given(
        "standproud.rules.folder", folder, "Allowed is one of never, start, watch.");
    SettingRefused.positive("standproud.rules.follow-every", followEvery);
    SettingRefused.size("standproud.rules.largest-edit", largestEdit);
  }

  /** Whether another person than the author has to publish. */
  public enum TwoPersons {
    /** Always. */
    TRUE,
    /** Never. */
    FALSE,
    /** For cards that remove or weaken a stop. */
    STOPS
  }

  /** When the folder of cards is read. */
  public enum FolderUse {
    /** Never: cards come from the store only. */
    NEVER,
    /** At the start, and when a reload is asked for. */
    START,
    /** Then, and whenever it is edited. */
    WATCH
  }

  /**
   * How past jobs are judged again.
   *
   * @param mostRecords how many of the newest records are judged again before cards are published
   */
  public record Impact(long mostRecords) {

    /** Checks the value. */
    public Impact {
      SettingRefused.range("standproud.rules.impact.most-records", mostRecords, 0, Long.MAX_VALUE);
    }
  }
}
