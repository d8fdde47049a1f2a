package org.standproud.contract;

import io.swagger.v3.oas.models.SpecVersion;
import io.swagger.v3.oas.models.media.Schema;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.FieldGuide.Entry;

/**
 * The schema of a request, built from the fields that the reader uses. A catalogue item has its own
 * schema.
 */
final class RequestSchema {

  /** Name of the schema of a whole request. */
  static final String NAME = "Setup";

  /** Name of the schema of a whole job. */
  static final String JOB = "Job";

  private static final String UNKNOWN = FieldGuide.UNKNOWN;
  private static final String QUANTITY = "QuantityWithUnit";
  private static final String BAND = "QuantityBand";

  private final Map<String, Schema<?>> named = new LinkedHashMap<>();
  private final Map<String, Schema<?>> objects = new LinkedHashMap<>();
  private final Set<String> shelved = new LinkedHashSet<>();

  /** Paths of items that another request described already. */
  private final Set<String> described = new LinkedHashSet<>();

  private RequestSchema() {}

  /** The schemas by name. */
  static Map<String, Schema<?>> schemas() {
    RequestSchema request = new RequestSchema();
    request.named.put(QUANTITY, quantity());
    request.named.put(BAND, band());
    Schema<?> whole =
        object(
            "A proposed set-up. Plain numbers are in the units of the system named; any number"
                + " may be an object with its own unit. Send \"unknown\" or null for what is not"
                + " known: it is never replaced by a typical value. A field left out is not known"
                + " either, except in a catalogue item: there the catalogue's value is used.");
    request.addAll(
        NAME, whole, FieldGuide.entries(UnitSystem.METRIC), FieldGuide.entries(UnitSystem.INCH));
    RequestSchema job = new RequestSchema();
    job.named.putAll(request.named);
    job.addAll(
        JOB,
        object(
            "A whole job: the blank, the finished plate, the machine and what is on hand. Numbers"
                + " are written as in a set-up."),
        FieldGuide.jobEntries(UnitSystem.METRIC),
        FieldGuide.jobEntries(UnitSystem.INCH));
    return job.named;
  }

  private void addAll(String name, Schema<?> whole, List<Entry> metric, List<Entry> inch) {
    objects.put("", whole);
    named.put(name, whole);
    for (int i = 0; i < metric.size(); i++) {
      String path = metric.get(i).path();
      if (described.stream().noneMatch(item -> path.startsWith(item + "/"))) {
        add(metric.get(i), inch.get(i).allowed());
      }
    }
  }

  private void add(Entry field, String allowedInch) {
    int cut = field.path().lastIndexOf('/');
    String above = field.path().substring(0, cut);
    String name = field.path().substring(cut + 1);
    Schema<?> owner = objects.get(above);
    if (owner == null) {
      throw new IllegalStateException("no object holds the field " + field.path());
    }
    Schema<?> schema = schema(field, name);
    schema.setDescription(describe(field, allowedInch, shelved.contains(above)));
    owner.addProperty(name, schema);
    if (field.required() && (!shelved.contains(above) || name.equals("name"))) {
      owner.addRequiredItem(name);
    }
  }

  private Schema<?> schema(Entry field, String name) {
    boolean nullable = !field.required();
    return switch (field.sort()) {
      case QUANTITY -> mayBeUnknown(nullable, typed("number"), ref(QUANTITY));
      case BAND -> mayBeUnknown(nullable, typed("number"), ref(QUANTITY), ref(BAND));
      case QUANTITIES ->
          mayBeUnknown(nullable, list(either(false, typed("number"), ref(QUANTITY))));
      case COUNT -> mayBeUnknown(nullable, typed("integer"));
      case COUNTS -> mayBeUnknown(nullable, list(typed("integer")));
      case CHOICE -> words(field.allowed(), nullable);
      case YES_NO -> mayBeUnknown(nullable, typed("boolean"));
      case TEXT -> typed("string", nullable);
      case PART -> opened(field.path());
      case SHELVED_PART -> shelved(field, name, nullable);
      case PARTS -> mayBeUnknown(nullable, list(opened(field.path() + "/*")));
      case SHELVED_PARTS -> mayBeUnknown(nullable, list(items(field, name)));
    };
  }

  private Schema<?> opened(String path) {
    Schema<?> object = object(null);
    objects.put(path, object);
    return object;
  }

  /** The items of a list: its name is theirs with an s. */
  private Schema<?> items(Entry field, String name) {
    described.add(field.path() + "/*");
    return either(false, typed("string"), ref(type(name.substring(0, name.length() - 1))));
  }

  private static String type(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  private Schema<?> shelved(Entry field, String name, boolean nullable) {
    String type = type(name);
    if (named.containsKey(type)) {
      described.add(field.path());
      return either(nullable, typed("string"), ref(type));
    }
    Schema<?> item = opened(field.path());
    item.setDescription(
        "A catalogue item described in full, or its name with the fields that replace the"
            + " catalogue's.");
    shelved.add(field.path());
    named.put(type, item);
    return either(nullable, typed("string"), ref(type));
  }

  private static String describe(Entry field, String allowedInch, boolean shelved) {
    String allowed =
        switch (field.sort()) {
          case PART, CHOICE, YES_NO -> ""; // the schema itself has the words
          default -> "; " + field.allowed();
        };
    String inch = field.allowed().equals(allowedInch) ? "" : "; inch: " + allowedInch;
    String when = shelved && field.required() ? "; required if the catalogue has no such item" : "";
    return field.meaning() + allowed + inch + when;
  }

  private static Schema<?> quantity() {
    Schema<?> quantity = object("A number with its own unit.");
    quantity.addProperty("value", typed("number").description("The number."));
    quantity.addProperty("unit", typed("string").description("The unit, such as mm, in, kN, lbf."));
    quantity.addRequiredItem("value");
    return quantity;
  }

  private static Schema<?> band() {
    Schema<?> band = object("A value known only within a range.");
    band.addProperty("low", typed("number").description("Least value."));
    band.addProperty("high", typed("number").description("Greatest value."));
    band.addProperty(
        "likely", typed("number").description("Likely value; the midpoint if left out."));
    band.addProperty(
        "unit", typed("string").description("The unit; the unit of the request if left out."));
    band.addRequiredItem("low");
    band.addRequiredItem("high");
    return band;
  }

  private static Schema<?> object(@Nullable String description) {
    Schema<?> object = typed("object");
    object.setDescription(description);
    object.setAdditionalProperties(false);
    return object;
  }

  private static Schema<?> words(String allowed, boolean nullable) {
    Schema<Object> words = typed("string", nullable);
    Arrays.stream(allowed.split(", ")).forEach(words::addEnumItemObject);
    if (nullable) {
      words.addEnumItemObject(UNKNOWN);
      words.addEnumItemObject(null);
    }
    return words;
  }

  private static Schema<?> either(boolean nullable, Schema<?>... choices) {
    Schema<Object> either = new Schema<>(SpecVersion.V31);
    for (Schema<?> choice : choices) {
      either.addOneOfItem(choice);
    }
    if (nullable) {
      either.addOneOfItem(typed("null"));
    }
    return either;
  }

  /** One of the choices; if the field may be unknown, also the word "unknown" and null. */
  private static Schema<?> mayBeUnknown(boolean nullable, Schema<?>... choices) {
    if (!nullable) {
      return choices.length == 1 ? choices[0] : either(false, choices);
    }
    Schema<?>[] all = Arrays.copyOf(choices, choices.length + 1);
    Schema<Object> unknown = typed("string");
    unknown.setConst(UNKNOWN);
    all[choices.length] = unknown;
    return either(true, all);
  }

  private static Schema<?> list(Schema<?> items) {
    Schema<Object> list = typed("array");
    list.setItems(items);
    return list;
  }

  private static Schema<?> ref(String name) {
    return new Schema<>(SpecVersion.V31).$ref("#/components/schemas/" + name);
  }

  static Schema<Object> typed(String type) {
    return typed(type, false);
  }

  private static Schema<Object> typed(String type, boolean nullable) {
    Schema<Object> schema = new Schema<>(SpecVersion.V31);
    schema.setTypes(new LinkedHashSet<>(nullable ? List.of(type, "null") : List.of(type)));
    return schema;
  }
}
