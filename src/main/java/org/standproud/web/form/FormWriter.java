package org.standproud.web.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide.Sort;
import org.standproud.setup.request.Problem;
import org.standproud.web.form.FormField.Option;

/** Writes the form: the fields of a request with what stands in them and what is wrong with it. */
final class FormWriter {

  private static final String FROM_SHELF = "as in the catalogue";
  private static final String NOT_SAID = "not known";

  private final Shelves shelves;
  private final Map<String, String> values;
  private final Map<String, List<Problem>> problems = new HashMap<>();
  private final List<FormField> fields = new ArrayList<>();

  FormWriter(Shelves shelves, Map<String, String> values, List<Problem> problems) {
    this.shelves = shelves;
    this.values = values;
    problems.forEach(
        p -> this.problems.computeIfAbsent(p.pointer(), pointer -> new ArrayList<>()).add(p));
  }

  /** All fields, once the sections are written. */
  List<FormField> fields() {
    return List.copyOf(fields);
  }

  /** The fields that something is wrong with, once the sections are written. */
  List<FormField> wrong() {
    return fields.stream().filter(field -> field.error() != null).toList();
  }

  /** The sections of the form; the units are no field of it but a state. */
  List<FormSection> sections(UnitSystem units) {
    List<FormSection> sections = new ArrayList<>();
    for (Guide guide : Guide.of(units)) {
      String path = "/" + guide.name();
      if (guide.sort() == Sort.PART) {
        sections.add(section(guide.label(), guide.inside(), path, false, false));
      } else if (guide.sort() == Sort.SHELVED_PART) {
        List<FormField> pick = List.of(pick(guide, path));
        FormSection own = own(guide, path);
        sections.add(new FormSection(guide.label(), false, true, pick, List.of(own)));
      } else if (guide.sort() == Sort.PARTS) {
        List<FormSection> items = items(guide, path, "number");
        sections.add(new FormSection(guide.label(), false, true, List.of(), items));
      }
    }
    return sections;
  }

  private FormSection own(Guide guide, String path) {
    String title = "This " + guide.label() + " is not quite as in the catalogue";
    return section(title, guide.inside(), path, true, true);
  }

  private FormSection section(
      String title, List<Guide> guides, String path, boolean folded, boolean shelved) {
    List<FormField> fields = new ArrayList<>();
    List<FormSection> inner = new ArrayList<>();
    for (Guide guide : guides) {
      String here = path + "/" + guide.name();
      switch (guide.sort()) {
        case PART -> inner.add(section(guide.label(), guide.inside(), here, shelved, shelved));
        case SHELVED_PART -> {
          fields.add(pick(guide, here));
          inner.add(own(guide, here));
        }
        case PARTS -> {
          if (!shelved) { // a list in the catalogue, such as a power curve, is changed there
            inner.addAll(items(guide, here, guide.label()));
          }
        }
        default -> {
          if (!(shelved && guide.name().equals("name"))) {
            fields.add(field(guide, here, shelved));
          }
        }
      }
    }
    boolean open = !folded || speaksOf(path + "/");
    return new FormSection(title, folded, open, fields, inner);
  }

  private List<FormSection> items(Guide guide, String path, String called) {
    List<FormSection> items = new ArrayList<>();
    for (int i = 0; i < FormReading.items(path, values); i++) {
      items.add(section(called + " " + (i + 1), guide.inside(), path + "/" + i, true, false));
    }
    return items;
  }

  private boolean speaksOf(String prefix) {
    return values.entrySet().stream()
            .anyMatch(v -> v.getKey().startsWith(prefix) && !v.getValue().isBlank())
        || problems.keySet().stream().anyMatch(p -> p.startsWith(prefix));
  }

  private FormField pick(Guide guide, String path) {
    List<Option> options = new ArrayList<>();
    options.add(new Option("", "pick one"));
    List<String> names = shelves.names(guide.name());
    names.forEach(name -> options.add(new Option(name, name)));
    String value = values.getOrDefault(path, "");
    if (!value.isEmpty() && !names.contains(value)) {
      options.add(new Option(value, value + " (not in the catalogue)"));
    }
    String hint = guide.entry().meaning() + ", from the catalogue";
    return written(
        new FormField(
            path, guide.label(), hint, true, options, value, fault(path, List.of("/name"))));
  }

  private FormField field(Guide guide, String path, boolean shelved) {
    boolean required = guide.entry().required() && !shelved;
    String value = values.getOrDefault(path, "");
    List<Option> options = options(guide, required, shelved);
    String allowed = options.isEmpty() ? "; " + guide.entry().allowed() : "";
    return written(
        new FormField(
            path,
            guide.label(),
            guide.entry().meaning() + allowed,
            required,
            options,
            value,
            fault(path, List.of("/value", "/unit", "/low", "/likely", "/high"))));
  }

  private FormField written(FormField field) {
    fields.add(field);
    return field;
  }

  private static List<Option> options(Guide guide, boolean required, boolean shelved) {
    List<Option> options = new ArrayList<>();
    if (guide.sort() != Sort.CHOICE && guide.sort() != Sort.YES_NO) {
      return options;
    }
    options.add(new Option("", required ? "pick one" : shelved ? FROM_SHELF : NOT_SAID));
    if (shelved && !guide.entry().required()) {
      options.add(new Option(TypedValue.NOT_KNOWN, NOT_SAID));
    }
    if (guide.sort() == Sort.YES_NO) {
      options.add(new Option("true", "yes"));
      options.add(new Option("false", "no"));
      return options;
    }
    for (String word : guide.entry().allowed().split(", ")) {
      options.add(new Option(word, word));
    }
    return options;
  }

  /** What is wrong with a field, or with a part of it that the form writes in one line. */
  private @Nullable String fault(String path, List<String> parts) {
    List<Problem> here = new ArrayList<>(problems.getOrDefault(path, List.of()));
    parts.forEach(part -> here.addAll(problems.getOrDefault(path + part, List.of())));
    if (here.isEmpty()) {
      return null;
    }
    return String.join(" ", here.stream().map(FormWriter::told).toList());
  }

  /** A problem in a sentence, with what may stand there instead. */
  static String told(Problem problem) {
    StringBuilder told = new StringBuilder(problem.message());
    if (problem.allowed() != null) {
      told.append("; wanted: ").append(problem.allowed());
      if (problem.unit() != null && !problem.allowed().endsWith(problem.unit())) {
        told.append(' ').append(problem.unit());
      }
    }
    if (problem.hint() != null) {
      told.append("; ").append(problem.hint());
    }
    return told.append('.').toString();
  }

  /** The problems that no field of the form stands for. */
  List<String> elsewhere(List<Problem> all) {
    List<FormField> wrong = wrong();
    return all.stream()
        .filter(p -> wrong.stream().noneMatch(f -> p.pointer().startsWith(f.path())))
        .map(p -> (p.pointer().isEmpty() ? "" : p.pointer().substring(1) + ": ") + told(p))
        .toList();
  }
}
