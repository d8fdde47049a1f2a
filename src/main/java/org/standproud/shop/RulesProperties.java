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
 * @param directory the cards as files: the first revision, and one way to edit them; revisions are
 *     stored with the records
 * @param folder when the folder is read: never, start (and when POST /v1/rules/reload is called) or
 *     watch
 * @param twoPersons whether someone other than the author must publish: true, false, or stops for
 *     cards that remove or weaken a stop; empty means stops with access control, else false
 * @param followEvery how often to check what another replica published
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
    SettingRefused.given("standproud.rules.directory", directory, "A folder is required.");
    SettingRefused.given(
        "standproud.rules.folder", folder, "One of never, start, watch is allowed.");
    SettingRefused.positive("standproud.rules.follow-every", followEvery);
    SettingRefused.size("standproud.rules.largest-edit", largestEdit);
  }

  /** Whether someone other than the author must publish. */
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
    /** Never: cards come from the database only. */
    NEVER,
    /** At start, and on request. */
    START,
    /** At start, and after every edit. */
    WATCH
  }

  /**
   * How past jobs are judged again.
   *
   * @param mostRecords number of the newest records judged again before cards are published
   */
  public record Impact(long mostRecords) {

    /** Checks the value. */
    public Impact {
      SettingRefused.range("standproud.rules.impact.most-records", mostRecords, 0, Long.MAX_VALUE);
    }
  }
}
