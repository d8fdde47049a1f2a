package org.standproud.audit;

import java.util.Locale;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** The type of a record in the chain. */
public enum RecordType {
  /** An answer; its text has no type, because it was the only type at first. */
  ASSESSMENT,
  /** A finding that a person accepted. */
  ACCEPTANCE,
  /** The withdrawal of an acceptance. */
  WITHDRAWAL,
  /** Texts of records removed or masked. */
  WITHHOLDING,
  /** A revision of the rule base or of the catalogue. */
  LOG_ENTRY;

  private static final JsonMapper MAPPER = JsonMapper.shared();
  private static final String MEMBER = "type";

  /** The word in texts and in the database. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Returns the type of a record.
   *
   * @param record the record
   */
  public static RecordType of(ChainRecord record) {
    if (record instanceof AuditRecord) {
      return ASSESSMENT;
    } else if (record instanceof Acceptance) {
      return ACCEPTANCE;
    }
    if (record instanceof LogEntry) {
      return LOG_ENTRY;
    }
    return record instanceof Withdrawal ? WITHDRAWAL : WITHHOLDING;
  }

  static RecordType of(CanonicalJson body) {
    JsonNode type = body.tree().path(MEMBER);
    for (RecordType one : values()) {
      if (type.isMissingNode() ? one == ASSESSMENT : type.equals(StringNode.valueOf(one.word()))) {
        return one;
      }
    }
    throw new NotCanonical("not a record: its type is not known");
  }

  /** The text of a record with its type. */
  CanonicalJson write(ChainRecord record) {
    ObjectNode tree = MAPPER.valueToTree(record);
    tree.put(MEMBER, word());
    return CanonicalJson.of(tree);
  }

  static <T> T read(CanonicalJson body, Class<T> type) {
    try {
      JsonNode tree = body.tree();
      if (tree instanceof ObjectNode object) {
        object.remove(MEMBER);
      }
      return MAPPER.treeToValue(tree, type);
    } catch (JacksonException e) {
      throw new NotCanonical("not a record: " + e.getOriginalMessage());
    }
  }
}
