package org.standproud.contract;

import io.swagger.v3.oas.models.media.Schema;
import java.util.List;
import java.util.Map;
import org.standproud.refusal.RefusalKind;

/** The schemas of problems, written by hand because no record of ours is serialized. */
final class ProblemSchema {

  /** Name of the schema of a problem. */
  static final String NAME = "Problem";

  private static final String SETUP_ERROR = "SetupError";
  private static final String CARD_ERROR = "CardError";
  private static final String IMPORTED_ROW = "ImportedRow";

  private ProblemSchema() {}

  /** Returns the schemas by name. */
  static Map<String, Schema<?>> schemas() {
    return Map.of(NAME, problem(), SETUP_ERROR, setupError(), CARD_ERROR, cardError());
  }

  private static Schema<?> problem() {
    Schema<Object> type =
        typed(
            "string",
            "Identifies the kind of problem; the address of its"
                + " description, relative to this service.");
    List.of(RefusalKind.values()).forEach(kind -> type.addEnumItemObject(kind.type()));
    Schema<Object> error = new Schema<>();
    error.addOneOfItem(ref(SETUP_ERROR));
    error.addOneOfItem(ref(CARD_ERROR));
    Schema<Object> errors = typed("array", "Every error in a set-up, a catalogue item or cards.");
    errors.setItems(error);
    Schema<Object> problem = typed("object", "A problem (RFC 9457).");
    problem.addProperty("type", type);
    problem.addProperty("title", typed("string", "The kind of problem in one phrase."));
    problem.addProperty("status", typed("integer", "The HTTP status."));
    problem.addProperty("detail", typed("string", "What went wrong this time."));
    problem.addProperty(
        "instance",
        typed(
            "string",
            "The address requested; for a fault of the service, a reference to its" + " log."));
    problem.addProperty("line", typed("integer", "Line where reading JSON stopped, from 1."));
    problem.addProperty("column", typed("integer", "Column where reading JSON stopped, from 1."));
    problem.addProperty("errors", errors);
    Schema<Object> rows = typed("array", "The result for each row of an import.");
    rows.setItems(ref(IMPORTED_ROW));
    problem.addProperty("rows", rows);
    problem.addProperty(
        "trace", typed("string", "Trace-id of the request (W3C Trace Context), as in the logs."));
    problem.setRequired(List.of("type", "title", "status", "detail"));
    return problem;
  }

  private static Schema<?> setupError() {
    Schema<Object> error = typed("object", "One error in a set-up.");
    error.addProperty("pointer", typed("string", "The field, as an RFC 6901 JSON Pointer."));
    error.addProperty("value", typed("string", "The value sent, shortened."));
    error.addProperty("message", typed("string", "What is wrong."));
    error.addProperty(
        "allowed", typed("string", "The allowed range or words, in the caller's" + " unit."));
    error.addProperty("unit", typed("string", "The unit of value and range."));
    error.addProperty("hint", typed("string", "The word probably meant."));
    error.setRequired(List.of("pointer", "message"));
    return error;
  }

  private static Schema<?> cardError() {
    Schema<Object> error = typed("object", "One error in a card.");
    error.addProperty("file", typed("string", "The file, relative to the folder of cards."));
    error.addProperty("line", typed("integer", "Line, from 1."));
    error.addProperty("column", typed("integer", "Column, from 1."));
    error.addProperty("fragment", typed("string", "The wrong text."));
    error.addProperty("message", typed("string", "Why it is refused."));
    error.addProperty("nearest", typed("string", "The known name probably meant."));
    error.addProperty("example", typed("string", "An example that works."));
    error.setRequired(List.of("file", "line", "column", "fragment", "message"));
    return error;
  }

  private static Schema<Object> typed(String type, String description) {
    Schema<Object> schema = RequestSchema.typed(type);
    schema.setDescription(description);
    return schema;
  }

  private static Schema<Object> ref(String name) {
    Schema<Object> ref = new Schema<>();
    ref.set$ref("#/components/schemas/" + name);
    return ref;
  }
}
