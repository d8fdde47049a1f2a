package org.standproud.assessment;

import java.util.List;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.NotCanonical;
import org.standproud.setup.request.Problem;
import org.standproud.setup.request.RequestText;
import tools.jackson.databind.JsonNode;

/**
 * A request as sent: well-formed JSON, not yet read as a set-up.
 *
 * @param tree the JSON
 */
public record SetupRequest(JsonNode tree) {

  /**
   * Parses a text.
   *
   * @param json the text
   * @throws MalformedRequestException if it is not JSON
   */
  public static SetupRequest of(String json) {
    try {
      return new SetupRequest(RequestText.json(json));
    } catch (RequestText.Malformed e) {
      throw new MalformedRequestException(e);
    }
  }

  /**
   * The request in canonical form, as it is stored.
   *
   * @throws SetupRejectedException if canonical form would change it
   */
  public CanonicalJson canonical() {
    try {
      return CanonicalJson.of(tree);
    } catch (NotCanonical e) {
      throw new SetupRejectedException(
          List.of(
              new Problem(
                  "", null, "cannot be stored unchanged: " + e.getMessage(), null, null, null)));
    }
  }
}
