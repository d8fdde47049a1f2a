package org.standproud.web.cards;

import java.security.Principal;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.standproud.audit.records.StoreBusy;
import org.standproud.mechanics.evidence.stage.DemonstrationSetups;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.card.NewCard;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.publishing.CardEdit;
import org.standproud.rules.publishing.PublishResult;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.rules.publishing.StoredRevision;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.shop.CardsRejectedException;
import org.standproud.shop.CatalogueProperties;
import org.standproud.shop.ShopCatalogue;
import org.standproud.shop.impact.ImpactJobs;
import org.standproud.shop.trial.CardTrials;
import org.standproud.web.recorded.RecordedAnswers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The card editor. The text is checked while it is typed; without JavaScript every button submits
 * the form and returns it with the text kept.
 */
@Controller
class CardEditorPages {

  private static final String NEW_ID = "NEW-ID";
  private static final String NEW_FILE = "holding/" + NEW_ID + ".yaml";

  private final RuleBasePublisher desk;
  private final CardTrials trials;
  private final ImpactJobs impacts;
  private final RecordedAnswers answers;
  private final DemonstrationSetups demonstrations;

  CardEditorPages(
      RuleBasePublisher desk,
      CardTrials trials,
      ImpactJobs impacts,
      RecordedAnswers answers,
      ShopCatalogue shop,
      CatalogueProperties catalogue) {
    this.desk = desk;
    this.trials = trials;
    this.impacts = impacts;
    this.answers = answers;
    this.demonstrations =
        new DemonstrationSetups(catalogue.setups(), shop.get().orElse(Catalogue.EMPTY));
  }

  @GetMapping("/rules/new")
  ModelAndView blank(Principal caller) {
    return opened(CardDraft.of(NEW_FILE, NewCard.text(NEW_ID), latest()), caller);
  }

  @GetMapping("/rules/{id}/edit")
  ModelAndView edit(@PathVariable String id, Principal caller) {
    String file =
        desk.inService().stream()
            .flatMap(base -> base.cards().stream())
            .filter(card -> card.id().equals(id))
            .findFirst()
            .orElseThrow(() -> new NotFoundException("No live rule has this id."))
            .card()
            .file();
    String text =
        Optional.ofNullable(desk.files().get(file))
            .orElseThrow(
                () -> new NotFoundException("This rule is no longer among those last published."));
    return opened(CardDraft.of(file, text, latest()), caller);
  }

  private ModelAndView opened(CardDraft draft, Principal caller) {
    return page(draft, checked(draft), Map.of(), caller);
  }

  /** Checks the card, tries it or starts an impact run, depending on the button. */
  @PostMapping("/rules/edit")
  ModelAndView act(
      @RequestParam Map<String, String> sent,
      @RequestParam(defaultValue = "check") String act,
      @RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace,
      Principal caller) {
    CardDraft draft = CardDraft.of(sent, caller);
    DraftResult result =
        switch (act) {
          case "try" -> tried(draft);
          case "impact" -> judgedAgain(draft);
          default -> checked(draft);
        };
    ModelAndView page = page(draft, result, Map.of(), caller);
    if (inPlace) {
      page.setViewName("card-edit :: " + (act.equals("check") ? "check" : "tried"));
      page.addObject("inPlace", true);
    }
    return page;
  }

  @PostMapping("/rules/proposals")
  ModelAndView propose(@RequestParam Map<String, String> sent, Principal caller) {
    return brought(
        CardDraft.of(sent, caller),
        caller,
        draft -> desk.propose(draft.edit(), draft.author(), draft.note()));
  }

  @PostMapping("/rules/publication")
  ModelAndView publish(@RequestParam Map<String, String> sent, Principal caller) {
    return brought(
        CardDraft.of(sent, caller),
        caller,
        draft ->
            desk.publish(draft.edit(), draft.author(), draft.note(), Impact.Progress.UNWATCHED));
  }

  private DraftResult checked(CardDraft draft) {
    CardEdit edit = draft.edit();
    Map<String, String> served = desk.files();
    return DraftResult.of(draft, desk.validate(edit), desk.diff(served, edit.onto(served)));
  }

  private DraftResult tried(CardDraft draft) {
    DraftResult checked = checked(draft);
    try {
      if (!draft.record().isEmpty()) {
        UUID id = UUID.fromString(draft.record());
        UnitSystem units = units(answers.record(id).record().account().request().tree());
        return checked.tried(
            TrialView.of("the record " + id, trials.onRecord(draft.edit(), id), units));
      }
      Optional<String> setup = demonstrations.text(draft.on());
      if (setup.isEmpty()) {
        return checked.saying("Pick a set-up or enter a record id to try the rule on.");
      }
      JsonNode request = JsonMapper.shared().readTree(setup.get());
      return checked.tried(
          TrialView.of(draft.on(), trials.onSetup(draft.edit(), request), units(request)));
    } catch (IllegalArgumentException | NotFoundException e) {
      return checked.saying("No record has this id.");
    }
  }

  private static UnitSystem units(JsonNode request) {
    String units = request.path("units").asString("");
    return units.equals(UnitSystem.INCH.words()) ? UnitSystem.INCH : UnitSystem.METRIC;
  }

  private DraftResult judgedAgain(CardDraft draft) {
    DraftResult checked = checked(draft);
    try {
      String author = draft.author().isEmpty() ? "rule page" : draft.author();
      return checked.with(impacts.start(draft.edit(), author).account());
    } catch (CardsRejectedException e) {
      return checked.saying("Correct the errors first; then past jobs can be checked.");
    } catch (StoreBusy e) {
      return checked.saying("Too many checks are waiting. Try again later.");
    }
  }

  private ModelAndView brought(
      CardDraft draft, Principal caller, Function<CardDraft, PublishResult> bring) {
    Map<String, String> unsigned = draft.unsigned();
    if (!unsigned.isEmpty()) {
      return PublishRedirect.refused(page(draft, checked(draft), unsigned, caller));
    }
    return PublishRedirect.of(
        bring.apply(draft),
        message -> page(draft, checked(draft).saying(message), Map.of(), caller));
  }

  private ModelAndView page(
      CardDraft draft, DraftResult result, Map<String, String> unsigned, Principal caller) {
    ModelAndView page = new ModelAndView("card-edit");
    page.addObject("draft", draft);
    page.addObject("result", result);
    page.addObject("unsigned", unsigned);
    page.addObject("fresh", !desk.files().containsKey(draft.file()));
    page.addObject("demonstrations", demonstrations.names());
    page.addObject("known", Author.known(caller));
    page.addObject("inPlace", false);
    return page;
  }

  private String latest() {
    return desk.latest().map(StoredRevision::id).orElse("");
  }
}
