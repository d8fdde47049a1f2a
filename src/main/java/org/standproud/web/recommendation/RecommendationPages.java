package org.standproud.web.recommendation;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.standproud.advice.compare.ComparedSetups;
import org.standproud.advice.plan.PassPlan;
import org.standproud.advice.remedy.Remedies;
import org.standproud.advice.remedy.Remedy;
import org.standproud.advice.sensitivity.MeasurementSuggestion;
import org.standproud.advice.sensitivity.SensitivityReport;
import org.standproud.advice.workholding.OtherHolds;
import org.standproud.assessment.NotReadyException;
import org.standproud.drawing.Figures;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import org.standproud.setup.units.QuantityKind;
import org.standproud.setup.units.UnitCode;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.ShopCatalogue;
import org.standproud.web.recorded.ComparedView;
import org.standproud.web.recorded.RecordedAnswers;
import org.standproud.web.words.PageWords;

/**
 * Recommendations for a recorded set-up, judged by the rule base in service; as a page, or as a
 * fragment of the answer page.
 */
@Controller
class RecommendationPages {

  private static final String IN_PLACE = "HX-Request";

  private final RecordedAnswers answers;
  private final RuleBaseHolder rules;
  private final ShopCatalogue shop;
  private final PageWords words;

  RecommendationPages(
      RecordedAnswers answers, RuleBaseHolder rules, ShopCatalogue shop, PageWords words) {
    this.answers = answers;
    this.rules = rules;
    this.shop = shop;
    this.words = words;
  }

  @GetMapping("/assessments/{id}/remedies")
  ModelAndView remedies(
      @PathVariable UUID id,
      @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace) {
    Remedies remedies = Remedies.of(answers.answer(id).setup(), ruleBase(), catalogue());
    return page("remedies", "remedies.title", id, inPlace)
        .addObject("remedies", remedies)
        .addObject("ways", views(remedies.ways()))
        .addObject("first", first(remedies))
        .addObject("also", views(remedies.alsoWorthDoing()))
        .addObject("nearest", views(remedies.nearest()));
  }

  @GetMapping("/assessments/{id}/other-holds")
  ModelAndView otherHolds(
      @PathVariable UUID id,
      @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace) {
    Setup setup = answers.answer(id).setup();
    boolean viseHolds = Remedies.of(setup, ruleBase(), catalogue()).viseHolds();
    OtherHolds holds = OtherHolds.of(setup, viseHolds, ruleBase(), catalogue());
    return page("holds", "holds.title", id, inPlace)
        .addObject("conclusion", holds.conclusion())
        .addObject("holds", holds.holds().stream().map(HoldView::of).toList());
  }

  @GetMapping("/assessments/{id}/questions")
  ModelAndView questions(
      @PathVariable UUID id,
      @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace) {
    SensitivityReport asked = SensitivityReport.of(answers.answer(id).setup(), ruleBase());
    return page("questions", "questions.title", id, inPlace)
        .addObject("all", asked.questions().size())
        .addObject(
            "questions", asked.questions().stream().filter(RecommendationPages::counts).toList());
  }

  /** A plan of passes; without an amount, for the amount that the recorded pass removes. */
  @GetMapping("/assessments/{id}/plan")
  ModelAndView plan(
      @PathVariable UUID id,
      @RequestParam(required = false) @Nullable Double remove,
      @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace) {
    Setup setup = answers.answer(id).setup();
    UnitCode unit = QuantityKind.LENGTH.unit(setup.units());
    double wholeM = remove == null ? PassTable.onePassM(setup) : unit.toSi(remove);
    ModelAndView page =
        page("plan", "plan.title", id, inPlace)
            .addObject("remove", new Figures(setup.units()).number(QuantityKind.LENGTH, wholeM))
            .addObject("unit", unit.code());
    try {
      return page.addObject("plan", PassTable.of(PassPlan.of(setup, wholeM, ruleBase())));
    } catch (IllegalArgumentException notThere) {
      return page.addObject("refused", words.of("plan.too.much"));
    }
  }

  private static boolean counts(MeasurementSuggestion question) {
    return question.changesVerdict() || question.spread() > 0;
  }

  @GetMapping("/assessments/{id}/plots")
  ModelAndView plots(
      @PathVariable UUID id,
      @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace) {
    return page("plots", "plots.title", id, inPlace)
        .addObject("plots", Plots.of(answers.answer(id).setup(), ruleBase()).charts());
  }

  /** The effect of a change, without opening it. */
  @PostMapping("/assessments/{id}/compare")
  ModelAndView compare(
      @PathVariable UUID id,
      @RequestParam String request,
      @RequestHeader(name = IN_PLACE, defaultValue = "false") boolean inPlace) {
    if (!(new SetupReader(catalogue()).readJson(request) instanceof Reading.Accepted changed)) {
      throw new NotFoundException("This is no set-up to compare with.");
    }
    ComparedSetups compared =
        ComparedSetups.of(answers.answer(id).setup(), changed.setup(), ruleBase());
    return new ModelAndView(inPlace ? "compared :: table" : "compared")
        .addObject("c", ComparedView.of(compared))
        .addObject("title", words.of("compare.title"));
  }

  /** The one change to offer first: the best way, or the nearest. */
  private @Nullable RemedyView first(Remedies remedies) {
    List<Remedy> best = remedies.ways().isEmpty() ? remedies.nearest() : remedies.ways();
    return best.isEmpty() ? null : RemedyView.of(best.get(0), catalogue());
  }

  private List<RemedyView> views(List<Remedy> remedies) {
    Catalogue catalogue = catalogue();
    return remedies.stream().map(remedy -> RemedyView.of(remedy, catalogue)).toList();
  }

  private ModelAndView page(String part, String title, UUID id, boolean inPlace) {
    return new ModelAndView(inPlace ? "recommendation :: " + part : "recommendation")
        .addObject("part", part)
        .addObject("inPlace", inPlace)
        .addObject("title", title)
        .addObject("id", id)
        .addObject("revision", ruleBase().revision().id());
  }

  private RuleBase ruleBase() {
    return rules.ruleBase().orElseThrow(() -> new NotReadyException("no rule base is in service"));
  }

  private Catalogue catalogue() {
    return shop.get().orElseThrow(() -> new NotReadyException(shop.fault()));
  }
}
