package org.standproud.web.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;
import org.springframework.web.servlet.ModelAndView;
import org.standproud.advice.Cautions;
import org.standproud.advice.compare.ComparedSetups;
import org.standproud.assessment.NotReadyException;
import org.standproud.mechanics.evidence.stage.DemonstrationSetups;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.Problem;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import org.standproud.shop.CatalogueProperties;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.SeedCatalogue;
import org.standproud.shop.ShopCatalogue;
import org.standproud.web.drawing.EndView;
import org.standproud.web.drawing.Loads;
import org.standproud.web.drawing.PlanView;
import org.standproud.web.drawing.PushView;
import org.standproud.web.recorded.ComparedView;
import org.standproud.web.recorded.FindingView;
import org.standproud.web.recorded.RecordedAnswers;

/**
 * Fills the set-up page: the form, and beside it the set-up as it stands, drawn and judged as a
 * draft that is not put on record.
 */
@Component
class SetupPage {

  private final ShopCatalogue shop;
  private final RuleBaseHolder rules;
  private final RecordedAnswers answers;
  private final SingletonSupplier<DemonstrationSetups> demonstrations;

  SetupPage(
      ShopCatalogue shop,
      RuleBaseHolder rules,
      RecordedAnswers answers,
      ObjectProvider<SeedCatalogue> seeds,
      CatalogueProperties catalogue) {
    this.shop = shop;
    this.rules = rules;
    this.answers = answers;
    this.demonstrations =
        SingletonSupplier.of(
            () ->
                new DemonstrationSetups(
                    catalogue.setups(), seeds.getObject().get().orElse(Catalogue.EMPTY)));
  }

  /**
   * What the form holds.
   *
   * @param units the units of its plain numbers
   * @param values what stands in its fields
   * @param before the assessment it is to be compared with, if there is one
   */
  record Filled(UnitSystem units, Map<String, String> values, @Nullable UUID before) {}

  DemonstrationSetups demonstrations() {
    return demonstrations.obtain();
  }

  Catalogue catalogue() {
    return shop.get().orElseThrow(() -> new NotReadyException(shop.fault()));
  }

  /**
   * The whole page.
   *
   * @param filled what the form holds
   * @param refused what was wrong with it when it was sent to be judged
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
    addDraft(page, filled);
    return page;
  }

  /**
   * What is replaced in the page after a change: the draft, what is wrong beside each field, and
   * the field that was moved, with the fields of a plan that may have moved along.
   *
   * @param filled what the form holds
   * @param moved the field that was changed by a handle, if one was
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
    return new FormWriter(Shelves.of(catalogue(), filled.units()), filled.values(), problems);
  }

  private List<FormField> addDraft(ModelAndView page, Filled filled) {
    Reading reading =
        new SetupReader(catalogue()).read(FormReading.request(filled.values(), filled.units()));
    List<Problem> problems =
        reading instanceof Reading.Refused refused ? refused.problems() : List.of();
    FormWriter writer = writer(filled, problems);
    writer.sections(filled.units());
    page.addObject("handles", Handle.of(filled.values(), filled.units()));
    page.addObject("missing", writer.wrong().stream().filter(FormField::blank).toList());
    page.addObject("mistyped", writer.wrong().stream().filter(f -> !f.blank()).toList());
    page.addObject("unfit", writer.elsewhere(problems));
    page.addObject("cautions", Cautions.all());
    if (reading instanceof Reading.Accepted accepted) {
      rules.ruleBase().ifPresent(ruleBase -> judge(page, accepted.setup(), ruleBase, filled));
    }
    return writer.fields();
  }

  private void judge(ModelAndView page, Setup setup, RuleBase ruleBase, Filled filled) {
    Draft draft = Draft.of(setup, ruleBase);
    Loads loads = Loads.of(draft.evidence());
    page.addObject("draft", draft.advice());
    page.addObject("mark", draft.advice().verdict().replace(' ', '-'));
    page.addObject(
        "findings",
        FindingView.of(draft.advice().findings(), draft.margins(), setup.units()).stream()
            .filter(f -> !f.finding().severity().equals("note"))
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
