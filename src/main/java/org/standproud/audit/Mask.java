package org.standproud.audit;

import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** What is removed from the text of a record. */
public enum Mask {
  /** The caller, and the names of those who decided. */
  CALLER,
  /**
   * Names, and job order, work master and operation wherever they occur, with the caller's note and
   * the reasons of decisions.
   */
  CALLER_AND_JOB,
  /** Everything but id, time, verdict, score, versions, findings, roles and cards. */
  ACCOUNT;

  /** Replaces removed text. */
  public static final String WITHHELD = "withheld";

  private static final CanonicalJson NOTHING = CanonicalJson.of(StringNode.valueOf(WITHHELD));

  /** The payload of a record reduced to its summary. */
  public static final RecordPayload NO_ACCOUNT =
      new RecordPayload(NOTHING, NOTHING, new Results.Full(NOTHING, NOTHING), NOTHING);

  /** The word in texts. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * The rest of a record; a withholding record is never reduced.
   *
   * @param record the record, or the rest left by an earlier mask
   */
  public ChainRecord of(ChainRecord record) {
    if (record instanceof AuditRecord answer) {
      return of(answer);
    } else if (record instanceof Acceptance given) {
      return of(given);
    } else if (record instanceof Withdrawal withdrawal) {
      return new Withdrawal(
          withdrawal.id(),
          withdrawal.time(),
          withdrawal.acceptance(),
          nameless(withdrawal.by()),
          reason(withdrawal.reason()));
    }
    return record;
  }

  private Acceptance of(Acceptance given) {
    return new Acceptance(
        given.id(),
        given.time(),
        given.assessment(),
        this == CALLER ? given.jobOrder() : masked(given.jobOrder()),
        given.card(),
        given.severity(),
        this == ACCOUNT ? NOTHING : given.said(),
        nameless(given.by()),
        reason(given.reason()),
        given.expires(),
        given.forJobOrder());
  }

  private String reason(String reason) {
    return this == CALLER ? reason : WITHHELD;
  }

  private static Person nameless(Person by) {
    return new Person(WITHHELD, by.role(), masked(by.caller()));
  }

  /**
   * The rest of an answer's record.
   *
   * @param record the record, or the rest left by an earlier mask
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

  private RecordPayload account(RecordPayload account) {
    return switch (this) {
      case CALLER ->
          new RecordPayload(
              account.request(),
              account.setup(),
              account.results(),
              withoutNames(account.answer()));
      case CALLER_AND_JOB ->
          new RecordPayload(
              withoutJob(account.request()),
              withoutJob(account.setup()),
              account.results(),
              withoutPeople(withoutJob(account.answer())));
      case ACCOUNT -> NO_ACCOUNT;
    };
  }

  /**
   * An answer without the names and reasons of its acceptances.
   *
   * @param answer the answer
   */
  public static CanonicalJson withoutPeople(CanonicalJson answer) {
    return withoutReasons(withoutNames(answer));
  }

  private static CanonicalJson withoutNames(CanonicalJson answer) {
    return changed(answer, shown -> shown.path("by") instanceof ObjectNode by && nameless(by));
  }

  private static boolean nameless(ObjectNode by) {
    by.put("name", WITHHELD);
    if (by.has("caller")) {
      by.put("caller", WITHHELD);
    }
    return true;
  }

  private static CanonicalJson withoutReasons(CanonicalJson answer) {
    return changed(
        answer,
        shown -> {
          shown.put("reason", WITHHELD);
          return true;
        });
  }

  /** An answer with changed acceptances; the same object if there are none. */
  private static CanonicalJson changed(CanonicalJson answer, Predicate<ObjectNode> change) {
    JsonNode tree = answer.tree();
    boolean changed = false;
    for (JsonNode finding : tree.path("findings")) {
      for (JsonNode shown : finding.path("acceptances")) {
        changed |= shown instanceof ObjectNode object && change.test(object);
      }
    }
    return changed ? CanonicalJson.of(tree) : answer;
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
