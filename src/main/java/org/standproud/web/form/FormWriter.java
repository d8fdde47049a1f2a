package org.standproud.web.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.FieldGuide.Sort;
import org.standproud.setup.request.FieldGuide.Step;
import org.standproud.setup.request.Problem;
import org.standproud.web.form.FormField.Option;
import org.standproud.web.words.PageWords;

/** Renders the form: the fields of a request with their values and errors. */
final class FormWriter {

  private final Shelves shelves;
  private final PageWords words;
  private final Map<String, String> values;
  private final Map<String, List<Problem>> problems = new HashMap<>();
  private final List<FormField> fields = new ArrayList<>();

  FormWriter(Shelves shelves, PageWords words, Map<String, String> values, List<Problem> problems) {
    this.shelves = shelves;
    this.words = words;
    this.values = values;
    problems.forEach(
        p -> this.problems.computeIfAbsent(p.pointer(), pointer -> new ArrayList<>()).add(p));
  }

  /** All fields, after the sections are written. */
  List<FormField> fields() {
    return List.copyOf(fields);
  }

  /** The fields with errors, after the sections are written. */
  List<FormField> wrong() {
    return fields.stream().filter(field -> field.error() != null).toList();
  }

  /**
   * The sections of the form: one for each step, with the basic fields first and the rest folded,
   * then the fields that are only for the record. The units are a state of the form, not a field.
   */
  List<FormSection> sections(UnitSystem units) {
    List<Guide> guides = Guide.of(units);
    List<FormSection> sections = new ArrayList<>();
    for (Step step : Step.values()) {
      sections.add(step(step, guides.stream().filter(g -> g.step() == step).toList()));
    }
    for (Guide guide : guides) {
      if (guide.step() == null && guide.sort() == Sort.PART) {
        sections.add(
            section(label(guide, guide.entry().path()), guide.inside(), guide.entry().path()));
      } else if (guide.step() == null && guide.sort() == Sort.PARTS) {
        String path = guide.entry().path();
        List<FormSection> items = items(guide, path);
        boolean open = speaksOf(path + "/");
        sections.add(new FormSection(label(guide, path), true, open, List.of(), items));
      }
    }
    return sections;
  }

  private FormSection step(Step step, List<Guide> guides) {
    List<FormField> first = new ArrayList<>();
    List<FormSection> inner = new ArrayList<>();
    List<Guide> rest = new ArrayList<>();
    for (String path : FieldGuide.first(step)) {
      for (Guide guide : Guide.flat(guides)) {
        if (guide.entry().path().equals(path)) {
          boolean shelved = guide.sort() == Sort.SHELVED_PART;
          first.add(shelved ? pick(guide, path) : field(guide, path, false));
          if (shelved) {
            inner.add(own(guide, path));
          }
        }
      }
    }
    for (Guide top : guides) {
      if (top.sort() == Sort.PART) {
        for (Guide guide : top.inside()) {
          if (guide.entry().first() == null && guide.name().equals("packing")) {
            inner.addAll(0, items(guide, guide.entry().path()));
          } else if (guide.entry().first() == null) {
            rest.add(guide);
          }
        }
      }
    }
    if (!rest.isEmpty()) {
      String above = guides.get(0).entry().path();
      FormSection more = section(words.of("form.more" + PageWords.dotted(above)), rest, above);
      boolean open = more.fields().stream().anyMatch(f -> !f.blank() || f.error() != null);
      inner.add(new FormSection(more.title(), true, open, more.fields(), more.inner()));
    }
    return new FormSection(
        words.of("form.step." + step.name().toLowerCase(Locale.ROOT)), false, true, first, inner);
  }

  private FormSection own(Guide guide, String path) {
    String title = words.of("form.own", label(guide, path).toLowerCase(Locale.ROOT));
    return section(title, guide.inside(), path, true, true);
  }

  private FormSection section(String title, List<Guide> guides, String path) {
    return section(title, guides, path, false, false);
  }

  private FormSection section(
      String title, List<Guide> guides, String path, boolean folded, boolean shelved) {
    List<FormField> fields = new ArrayList<>();
    List<FormSection> inner = new ArrayList<>();
    for (Guide guide : guides) {
      String here = path + "/" + guide.name();
      switch (guide.sort()) {
        case PART -> inner.add(section(label(guide, here), guide.inside(), here, shelved, shelved));
        case SHELVED_PART -> {
          fields.add(pick(guide, here));
          inner.add(own(guide, here));
        }
        case PARTS -> {
          if (!shelved) { // a list in the catalogue, such as a power curve, is edited there
            inner.addAll(items(guide, here));
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

  private List<FormSection> items(Guide guide, String path) {
    List<FormSection> items = new ArrayList<>();
    String called = words.or("item" + PageWords.dotted(path), guide.label());
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

  private String label(Guide guide, String path) {
    return words.or("field" + PageWords.dotted(path), guide.label());
  }

  private FormField pick(Guide guide, String path) {
    List<Option> options = new ArrayList<>();
    options.add(new Option("", words.of("form.pick")));
    List<String> names = shelves.names(guide.name());
    names.forEach(name -> options.add(new Option(name, name)));
    String value = values.getOrDefault(path, "");
    if (!value.isEmpty() && !names.contains(value)) {
      options.add(new Option(value, words.of("form.not.listed", value)));
    }
    String error = fault(path, List.of("/name"), true);
    return written(
        new FormField(path, label(guide, path), hint(guide, path), true, options, value, error));
  }

  private FormField field(Guide guide, String path, boolean shelved) {
    boolean required = guide.entry().required() && !shelved;
    String value = values.getOrDefault(path, "");
    List<Option> options = options(guide, path, required, shelved);
    List<String> parts = List.of("/value", "/unit", "/low", "/likely", "/high");
    String error = fault(path, parts, !options.isEmpty());
    return written(
        new FormField(
            path, label(guide, path), hint(guide, path), required, options, value, error));
  }

  private FormField written(FormField field) {
    fields.add(field);
    return field;
  }

  /** The meaning of a field, where its label is not enough, and its allowed values. */
  private String hint(Guide guide, String path) {
    String key = "field" + PageWords.dotted(path);
    boolean labelled = !words.or(key, "").isEmpty();
    String meaning = words.or(key + ".hint", labelled ? "" : guide.entry().meaning());
    String allowed =
        switch (guide.sort()) {
          case QUANTITY, COUNT -> guide.entry().allowed();
          case BAND -> guide.entry().allowed().replaceAll(", or a .*", "");
          case QUANTITIES, COUNTS -> guide.entry().allowed();
          default -> "";
        };
    String gap = meaning.isEmpty() || allowed.isEmpty() ? "" : ". ";
    return capital(meaning) + gap + capital(allowed);
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private List<Option> options(Guide guide, String path, boolean required, boolean shelved) {
    List<Option> options = new ArrayList<>();
    if (guide.sort() != Sort.CHOICE && guide.sort() != Sort.YES_NO) {
      return options;
    }
    String unknown = words.of("form.unknown");
    String unset = shelved ? words.of("form.shelved") : unknown;
    options.add(new Option("", required ? words.of("form.pick") : unset));
    if (shelved && !guide.entry().required()) {
      options.add(new Option(TypedValue.NOT_KNOWN, unknown));
    }
    if (guide.sort() == Sort.YES_NO) {
      options.add(new Option("true", words.of("form.yes")));
      options.add(new Option("false", words.of("form.no")));
      return options;
    }
    for (String word : guide.entry().allowed().split(", ")) {
      options.add(new Option(word, words.choice(path, word)));
    }
    return options;
  }

  /** The error of a field, or of a part of it that the form writes in one line. */
  private @Nullable String fault(String path, List<String> parts, boolean picked) {
    List<Problem> here = new ArrayList<>(problems.getOrDefault(path, List.of()));
    parts.forEach(part -> here.addAll(problems.getOrDefault(path + part, List.of())));
    if (here.isEmpty()) {
      return null;
    }
    return String.join(" ", here.stream().map(problem -> sentence(problem, picked)).toList());
  }

  private String sentence(Problem problem, boolean picked) {
    String allowed = allowed(problem);
    return switch (problem.message()) {
      case Problem.MISSING, Problem.UNKNOWN ->
          picked ? words.of("form.error.pick") : words.of("form.error.enter", allowed);
      case Problem.NO_NUMBER -> words.of("form.error.enter", allowed);
      case Problem.OUT_OF_RANGE -> words.of("form.error.range", allowed);
      default -> sentence(problem);
    };
  }

  /** A problem in a sentence, with the allowed values. */
  private static String sentence(Problem problem) {
    StringBuilder sentence = new StringBuilder(capital(problem.message()));
    if (problem.allowed() != null) {
      sentence.append(": ").append(allowed(problem));
    }
    if (problem.hint() != null) {
      sentence.append("; ").append(problem.hint());
    }
    return sentence.append(sentence.toString().endsWith("?") ? "" : ".").toString();
  }

  private static String allowed(Problem problem) {
    String allowed = problem.allowed() == null ? "" : problem.allowed();
    boolean bare = problem.unit() == null || problem.unit().equals("1");
    return bare || allowed.isEmpty() || allowed.endsWith(problem.unit())
        ? allowed.replaceAll(", or a .*", "")
        : allowed + " " + problem.unit();
  }

  /** The problems without a field in the form. */
  List<String> elsewhere(List<Problem> all) {
    List<FormField> wrong = wrong();
    return all.stream()
        .filter(p -> wrong.stream().noneMatch(f -> p.pointer().startsWith(f.path())))
        .map(p -> (p.pointer().isEmpty() ? "" : p.pointer().substring(1) + ": ") + sentence(p))
        .toList();
  }
}
