package org.standproud.web.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.FieldGuide.Entry;
import org.standproud.setup.request.FieldGuide.Sort;
import org.standproud.setup.request.Problem;
import org.standproud.web.form.TypedValue;
import org.standproud.web.words.PageWords;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The few fields of a job, named by their JSON Pointers, and the request they make. */
final class JobForm {

  static final String UNITS = "/units";
  static final String MACHINE = "/machine";
  private static final String JOB_ORDER = "/job/jobOrder";
  private static final String VISES = "/shelf/vises";
  private static final String CUTTERS = "/shelf/cutters";

  private static final Map<String, List<String>> SECTIONS = sections();

  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private final UnitSystem units;
  private final Map<String, String> values;

  /**
   * A form.
   *
   * @param values what was typed, by pointer
   */
  JobForm(Map<String, String> values) {
    this.values = Map.copyOf(values);
    this.units =
        UnitSystem.INCH.words().equals(values.get(UNITS)) ? UnitSystem.INCH : UnitSystem.METRIC;
    FieldGuide.jobEntries(units).forEach(entry -> entries.put(entry.path(), entry));
  }

  private static Map<String, List<String>> sections() {
    Map<String, List<String>> sections = new LinkedHashMap<>();
    sections.put(
        "blank",
        List.of(
            "/blank/material",
            "/blank/length",
            "/blank/thickness",
            "/blank/height",
            "/blank/surface",
            "/blank/edges"));
    sections.put(
        "finished",
        List.of(
            "/finished/length",
            "/finished/thickness",
            "/finished/height",
            "/finished/thicknessTolerance",
            "/finished/heightTolerance",
            "/finished/roughness"));
    sections.put("shelf", List.of(MACHINE, VISES, CUTTERS, "/feedDrive", "/clamping", JOB_ORDER));
    return sections;
  }

  /**
   * A section of the form.
   *
   * @param name its name
   * @param fields its fields
   */
  record Section(String name, List<JobField> fields) {}

  /**
   * A field of the form.
   *
   * @param path its JSON Pointer
   * @param id its id on the page
   * @param label its name
   * @param value what was typed
   * @param required whether it has to be given
   * @param options the choices; empty for text
   * @param names names that may be picked; empty if there are none
   * @param decimal whether it takes a number
   * @param hint what may stand there
   * @param error what is wrong with it; null if nothing is
   */
  record JobField(
      String path,
      String id,
      String label,
      String value,
      boolean required,
      List<String> options,
      List<String> names,
      boolean decimal,
      String hint,
      @Nullable String error) {}

  UnitSystem units() {
    return units;
  }

  /** Whether something was typed. */
  boolean isFilled() {
    return values.entrySet().stream()
        .anyMatch(v -> !v.getKey().equals(UNITS) && !v.getValue().isBlank());
  }

  /** The request that the fields make. */
  ObjectNode request() {
    ObjectNode request = JsonNodeFactory.instance.objectNode();
    request.put("units", units.words());
    for (String parent : List.of("job", "blank", "finished")) {
      request.putObject(parent);
    }
    for (List<String> paths : SECTIONS.values()) {
      for (String path : paths) {
        String typed = values.getOrDefault(path, "").strip();
        if (!typed.isEmpty()) {
          put(request, path, node(path, typed));
        }
      }
    }
    ObjectNode job = (ObjectNode) request.get("job");
    if (job.isEmpty()) {
      job.put("jobOrder", "not given");
    }
    return request;
  }

  private JsonNode node(String path, String typed) {
    Entry entry = entry(path);
    if (entry.sort() != Sort.SHELVED_PARTS) {
      return TypedValue.node(typed, entry.sort());
    }
    ArrayNode names = JsonNodeFactory.instance.arrayNode();
    Arrays.stream(typed.split(";")).map(String::strip).filter(n -> !n.isEmpty()).forEach(names::add);
    return names;
  }

  private static void put(ObjectNode request, String path, JsonNode value) {
    String[] steps = path.substring(1).split("/");
    ObjectNode owner = request;
    for (int i = 0; i < steps.length - 1; i++) {
      owner = owner.withObject("/" + steps[i]);
    }
    owner.set(steps[steps.length - 1], value);
  }

  /** The form values of a request whose lists are lists of names. */
  static Map<String, String> values(JsonNode request) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put(UNITS, request.path("units").asString());
    for (List<String> paths : SECTIONS.values()) {
      for (String path : paths) {
        JsonNode there = request.at(path);
        if (there.isArray()) {
          List<String> names = new ArrayList<>();
          there.forEach(name -> names.add(name.asString()));
          values.put(path, String.join("; ", names));
        } else if (!there.isMissingNode()) {
          values.put(path, TypedValue.typed(there));
        }
      }
    }
    return values;
  }

  List<Section> sections(List<Problem> problems, Catalogue catalogue, PageWords words) {
    List<Section> sections = new ArrayList<>();
    SECTIONS.forEach(
        (name, paths) ->
            sections.add(
                new Section(
                    name,
                    paths.stream().map(p -> field(p, problems, catalogue, words)).toList())));
    return sections;
  }

  /** Problems of things that have no field here. */
  static List<String> elsewhere(List<Problem> problems) {
    return problems.stream()
        .filter(problem -> SECTIONS.values().stream().noneMatch(p -> owns(p, problem)))
        .map(JobForm::text)
        .toList();
  }

  private static boolean owns(List<String> paths, Problem problem) {
    return paths.stream().anyMatch(path -> isAt(path, problem));
  }

  private static boolean isAt(String path, Problem problem) {
    return problem.pointer().equals(path) || problem.pointer().startsWith(path + "/");
  }

  private static String text(Problem problem) {
    String allowed = problem.allowed() == null ? "" : ": " + problem.allowed();
    String unit =
        problem.unit() == null || allowed.endsWith(" " + problem.unit()) ? "" : " " + problem.unit();
    String hint = problem.hint() == null ? "" : ", " + problem.hint();
    return problem.message() + allowed + (allowed.isEmpty() ? "" : unit) + hint;
  }

  private JobField field(
      String path, List<Problem> problems, Catalogue catalogue, PageWords words) {
    Entry entry = entry(path);
    boolean choice = entry.sort() == Sort.CHOICE;
    return new JobField(
        path,
        "j" + path.replace('/', '-'),
        words.of("job.field" + PageWords.dotted(path)),
        values.getOrDefault(path, ""),
        entry.required() && !path.equals(JOB_ORDER),
        choice ? List.of(entry.allowed().split(", ")) : List.of(),
        names(path, catalogue),
        entry.sort() == Sort.QUANTITY,
        entry.sort() == Sort.QUANTITY ? entry.allowed() : "",
        problems.stream().filter(p -> isAt(path, p)).findFirst().map(JobForm::text).orElse(null));
  }

  private static List<String> names(String path, Catalogue catalogue) {
    return switch (path) {
      case "/blank/material" -> List.copyOf(catalogue.materials().keySet());
      case MACHINE -> List.copyOf(catalogue.machines().keySet());
      case VISES -> List.copyOf(catalogue.vises().keySet());
      default -> List.of();
    };
  }

  private Entry entry(String path) {
    Entry entry = entries.get(path);
    if (entry == null) {
      throw new IllegalStateException("a job has no field " + path);
    }
    return entry;
  }
}
