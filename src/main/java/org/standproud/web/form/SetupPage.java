package org.standproud.web.form;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;
import org.springframework.web.servlet.ModelAndView;
import org.standproud.advice.Cautions;
import org.standproud.advice.Verdict;
import org.standproud.advice.compare.ComparedSetups;
import org.standproud.assessment.NotReadyException;
import org.standproud.mechanics.evidence.stage.DemonstrationSetups;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.KnownParts;
import org.standproud.setup.request.Problem;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import org.standproud.setup.units.QuantityKind;
import org.standproud.shop.CatalogueProperties;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.SeedCatalogue;
import org.standproud.shop.ShopCatalogue;
import org.standproud.web.drawing.EndView;
import org.standproud.web.drawing.Loads;
import org.standproud.web.drawing.PlanView;
import org.standproud.web.drawing.PushView;
import org.standproud.web.drawing.SketchView;
import org.standproud.web.recorded.ComparedView;
import org.standproud.web.recorded.FindingView;
import org.standproud.web.recorded.RecordedAnswer;
import org.standproud.web.recorded.RecordedAnswers;
import org.standproud.web.words.PageWords;
import tools.jackson.databind.node.ObjectNode;

/**
 * Fills the set-up page: the form, and beside it the current draft, drawn and judged but not
 * recorded.
 */
@Component
class SetupPage {

  private static final String NOT_JUDGED = "not-judged";

  private final ShopCatalogue shop;
  private final RuleBaseHolder rules;
  private final RecordedAnswers answers;
  private final PageWords words;
  private final SingletonSupplier<DemonstrationSetups> demonstrations;

  SetupPage(
      ShopCatalogue shop,
      RuleBaseHolder rules,
      RecordedAnswers answers,
      PageWords words,
      ObjectProvider<SeedCatalogue> seeds,
      CatalogueProperties catalogue) {
    this.shop = shop;
    this.rules = rules;
    this.answers = answers;
    this.words = words;
    this.demonstrations =
        SingletonSupplier.of(
            () ->
                new DemonstrationSetups(
                    catalogue.setups(), seeds.getObject().get().orElse(Catalogue.EMPTY)));
  }

  /**
   * The state of the form.
   *
   * @param units the units of its plain numbers
   * @param values values of its fields
   * @param before the assessment to compare with, if there is one
   */
  record Filled(UnitSystem units, Map<String, String> values, @Nullable UUID before) {

    /** The same in other units. */
    Filled in(UnitSystem other) {
      return new Filled(other, UnitSwitch.converted(values, units, other), before);
    }

    /** The same with more fields filled. */
    Filled with(Map<String, String> more) {
      Map<String, String> all = new HashMap<>(values);
      all.putAll(more);
      return new Filled(units, all, before);
    }

    ObjectNode request() {
      return FormReading.request(values, units);
    }
  }

  /** What a draft would assume for missing fields. */
  Map<String, String> assumed(Filled filled) {
    KnownParts known = new SetupReader(catalogue()).known(filled.request());
    return AssumedValues.of(filled.values(), known, filled.units());
  }

  DemonstrationSetups demonstrations() {
    return demonstrations.obtain();
  }

  Catalogue catalogue() {
    return shop.get().orElseThrow(() -> new NotReadyException(shop.fault()));
  }

  /**
   * The whole page.
   *
   * @param filled the state of the form
   * @param refused problems found when it was submitted
   */
  ModelAndView whole(Filled filled, List<Problem> refused) {
    ModelAndView page = new ModelAndView("setup");
    FormWriter writer = writer(filled, refused);
    page.addObject("sections", writer.sections(filled.units()));
    page.addObject("wrong", writer.wrong());
    page.addObject("elsewhere", writer.elsewhere(refused));
    page.addObject("units", filled.units().words());
    page.addObject("other", other(filled.units()).words());
    page.addObject("demonstrations", demonstrations().names());
    page.addObject("before", filled.before());
    page.addObject("was", was(filled));
    page.addObject("typed", UnitSwitch.hidden(filled.values()));
    addDraft(page, filled);
    return page;
  }

  /**
   * The old value of each field changed since the assessment that the form was opened from, by
   * path.
   */
  private Map<String, String> was(Filled filled) {
    if (filled.before() == null) {
      return Map.of();
    }
    RecordedAnswer recorded = answers.answer(filled.before());
    Map<String, String> before =
        FormReading.values(
            Shelves.request(recorded.setup(), catalogue(), filled.units()), filled.units());
    Map<String, String> asked =
        FormReading.values(
            answers.record(filled.before()).record().account().request().tree(), filled.units());
    Map<String, String> was = new HashMap<>();
    before.forEach(
        (path, value) -> {
          String now = filled.values().getOrDefault(path, "");
          if (!now.equals(value) && !now.equals(asked.getOrDefault(path, value))) {
            was.put(path, value);
          }
        });
    return was;
  }

  /**
   * The parts of the page to replace after a change: the draft, the errors beside each field, and
   * the field that was moved, with the fields of a plan that moved with it.
   *
   * @param filled the state of the form
   * @param moved the field changed by a handle, if any
   */
  ModelAndView changed(Filled filled, @Nullable String moved) {
    ModelAndView page = new ModelAndView("draft :: changed");
    List<FormField> fields = addDraft(page, filled);
    page.addObject("fields", fields);
    page.addObject("moved", fields.stream().filter(f -> isMoved(f.path(), moved)).toList());
    return page;
  }

  private static boolean isMoved(String field, @Nullable String moved) {
    return moved != null && (field.equals(moved) || Handle.goesWith(field, moved));
  }

  private FormWriter writer(Filled filled, List<Problem> problems) {
    return new FormWriter(
        Shelves.of(catalogue(), filled.units()), words, filled.values(), problems);
  }

  private List<FormField> addDraft(ModelAndView page, Filled filled) {
    SetupReader reader = new SetupReader(catalogue());
    KnownParts known = reader.known(filled.request());
    Map<String, String> assumed = AssumedValues.of(filled.values(), known, filled.units());
    Map<String, String> supposed = AssumedValues.withJob(filled.with(assumed).values());
    Reading reading = reader.read(FormReading.request(supposed, filled.units()));
    List<Problem> problems =
        reading instanceof Reading.Refused refused ? refused.problems() : List.of();
    FormWriter writer = writer(filled, problems);
    writer.sections(filled.units());
    List<FormField> wrong = writer.wrong();
    page.addObject("handles", Handle.of(filled.values(), filled.units()));
    List<FormField> missing = wrong.stream().filter(FormField::blank).toList();
    page.addObject("missing", missing);
    page.addObject("next", next(missing));
    page.addObject("mistyped", wrong.stream().filter(f -> !f.blank()).toList());
    page.addObject("unfit", writer.elsewhere(problems));
    page.addObject("assumed", assumed(writer.fields(), assumed, filled.units()));
    page.addObject("cautions", Cautions.all());
    page.addObject("mark", NOT_JUDGED);
    if (reading instanceof Reading.Accepted accepted) {
      rules
          .ruleBase()
          .ifPresent(
              ruleBase -> judge(page, accepted.setup(), ruleBase, filled, assumed.isEmpty()));
    } else {
      page.addObject("sketch", SketchView.of(known, filled.units(), words::of, "sketch"));
    }
    return writer.fields();
  }

  /** What to enter next: basic fields before those that can wait. */
  private static List<FormField> next(List<FormField> missing) {
    List<String> first =
        Stream.of(FieldGuide.Step.values()).flatMap(s -> FieldGuide.first(s).stream()).toList();
    List<FormField> before = missing.stream().filter(f -> first.contains(f.path())).toList();
    return before.isEmpty() ? missing : before;
  }

  /** The assumptions, in words. */
  private List<String> assumed(
      List<FormField> fields, Map<String, String> assumed, UnitSystem units) {
    Map<String, QuantityKind> kinds = new HashMap<>();
    FieldGuide.entries(units).forEach(e -> kinds.put(e.path(), e.kind()));
    return fields.stream()
        .filter(field -> assumed.containsKey(field.path()))
        .map(
            field -> {
              String value = assumed.getOrDefault(field.path(), "");
              QuantityKind kind = kinds.get(field.path());
              String unit = kind == null ? "" : " " + kind.unit(units).code();
              return field.label().replaceAll("\\?$", "")
                  + ": "
                  + words.choice(field.path(), value)
                  + unit;
            })
        .toList();
  }

  private void judge(
      ModelAndView page, Setup setup, RuleBase ruleBase, Filled filled, boolean complete) {
    Draft draft = Draft.of(setup, ruleBase);
    Loads loads = Loads.of(draft.evidence());
    Verdict verdict = draft.advice().verdict();
    boolean stopped = verdict == Verdict.DO_NOT_RUN;
    page.addObject("draft", draft.advice());
    page.addObject("complete", complete);
    // A verdict based on assumed values is never shown as safe.
    page.addObject("mark", complete || stopped ? verdict.words().replace(' ', '-') : NOT_JUDGED);
    page.addObject("judged", verdict != Verdict.NOT_JUDGED);
    page.addObject(
        "findings",
        FindingView.of(draft.advice().findings(), draft.margins(), setup.units()).stream()
            .filter(f -> f.finding().severity() != Severity.NOTE)
            .toList());
    page.addObject("plan", PlanView.of(setup, "plan"));
    page.addObject("end", EndView.of(setup, loads, "end"));
    page.addObject("push", PushView.of(loads, setup.units(), "push"));
    Optional.ofNullable(filled.before())
        .map(id -> ComparedSetups.of(answers.answer(id).setup(), setup, ruleBase))
        .ifPresent(comparison -> page.addObject("comparison", ComparedView.of(comparison)));
  }

  private static UnitSystem other(UnitSystem units) {
    return units == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH;
  }
}
