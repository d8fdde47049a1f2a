package org.standproud.audit;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** What is taken from the text of a record. */
public enum Mask {
  /** Who asked. */
  CALLER,
  /**
   * Who asked, and the job order, work master and operation, wherever they stand, with the caller's
   * note.
   */
  CALLER_AND_JOB,
  /** Everything but id, time, verdict, score, versions and findings. */
  ACCOUNT;

  /** What stands where something was taken. */
  public static final String WITHHELD = "withheld";

  private static final CanonicalJson NOTHING = CanonicalJson.of(StringNode.valueOf(WITHHELD));

  /** The account of a record of which nothing is left but its summary. */
  public static final Account NO_ACCOUNT = new Account(NOTHING, NOTHING, NOTHING, NOTHING, NOTHING);

  /** The word in texts. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * What is left of a record.
   *
   * @param record the record, or what an earlier mask left of it
   */
  public AuditRecord of(AuditRecord record) {
    Asked asked = record.asked();
    boolean jobToo = this != CALLER;
    return new AuditRecord(
        record.id(),
        record.time(),
        new Asked(
            WITHHELD,
            jobToo ? masked(asked.jobOrder()) : asked.jobOrder(),
            jobToo ? masked(asked.workMaster()) : asked.workMaster(),
            jobToo ? masked(asked.operation()) : asked.operation(),
            this == ACCOUNT ? masked(asked.machine()) : asked.machine()),
        record.judged(),
        record.versions(),
        account(record.account()),
        record.findings());
  }

  private Account account(Account account) {
    return switch (this) {
      case CALLER -> account;
      case CALLER_AND_JOB ->
          new Account(
              withoutJob(account.request()),
              withoutJob(account.setup()),
              account.evidence(),
              account.trace(),
              withoutJob(account.answer()));
      case ACCOUNT -> NO_ACCOUNT;
    };
  }

  private static CanonicalJson withoutJob(CanonicalJson part) {
    JsonNode tree = part.tree();
    if (tree.path("job") instanceof ObjectNode job) {
      job.properties().stream()
          .filter(word -> !word.getValue().isNull())
          .map(Map.Entry::getKey)
          .toList()
          .forEach(name -> job.put(name, WITHHELD));
    }
    if (tree instanceof ObjectNode whole && whole.has("note")) {
      whole.put("note", WITHHELD);
    }
    return CanonicalJson.of(tree);
  }

  private static @Nullable String masked(@Nullable String word) {
    return word == null ? null : WITHHELD;
  }
}
