package org.standproud.api.sarif;

import java.util.Map;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.canonical.CanonicalJson;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * Identifies equal results across runs: the same card on the same set-up, for any job, time and
 * revision.
 */
final class Fingerprint {

  private final CanonicalJson setup;

  /** The fingerprints for the set-up of a record. */
  Fingerprint(AuditRecord record) {
    JsonNode tree = record.account().setup().tree();
    if (tree instanceof ObjectNode whole) {
      whole.remove("job");
      whole.remove("note");
    }
    this.setup = CanonicalJson.of(tree);
  }

  /** SHA-256 over the card and the resolved set-up without its job and note. */
  String of(String card) {
    CanonicalJson id = CanonicalJson.of(StringNode.valueOf(card));
    return CanonicalJson.object(Map.of("card", id, "setup", setup)).sha256();
  }
}
