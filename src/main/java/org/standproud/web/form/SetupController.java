package org.standproud.web.form;

import java.security.Principal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;
import org.standproud.assessment.Assessor;
import org.standproud.assessment.SetupRejectedException;
import org.standproud.refusal.NotFoundException;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.Problem;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.RequestText;
import org.standproud.setup.request.SetupReader;
import org.standproud.web.form.Handle.Steps;
import org.standproud.web.form.SetupPage.Filled;
import org.standproud.web.recorded.RecordedAnswers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The page on which a set-up is described. While it is described it is judged as a draft; sent, it
 * is judged like any other and put on record.
 */
@Controller
class SetupController {

  private final Assessor assessor;
  private final RecordedAnswers answers;
  private final SetupPage page;

  SetupController(Assessor assessor, RecordedAnswers answers, SetupPage page) {
    this.assessor = assessor;
    this.answers = answers;
    this.page = page;
  }

  @GetMapping("/")
  ModelAndView blank(
      @RequestParam(required = false) @Nullable String from,
      @RequestParam(required = false) @Nullable UnitSystem units) {
    Filled filled =
        from == null || from.isBlank()
            ? new Filled(units == null ? UnitSystem.METRIC : units, Map.of(), null)
            : start(from, units);
    return page.whole(filled, List.of()).addObject("from", from);
  }

  @PostMapping("/")
  ModelAndView judge(
      @RequestParam Map<String, String> values,
      @RequestParam("/units") UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before,
      @RequestParam(required = false) @Nullable UnitSystem convert,
      Principal caller)
      throws InterruptedException {
    Filled filled = new Filled(units, values, before);
    ObjectNode request = FormReading.request(values, units);
    if (convert != null) {
      return converted(filled, request, convert);
    }
    try {
      UUID id = assessor.assess(request.toString(), caller.getName()).id();
      RedirectView answer = new RedirectView("/assessments/" + id);
      answer.setStatusCode(HttpStatus.SEE_OTHER);
      return new ModelAndView(answer);
    } catch (SetupRejectedException refused) {
      return refused(filled, refused.problems());
    }
  }

  /** The page with the draft as it now stands, for those whose browser runs no script. */
  @PostMapping(path = "/", params = "draft")
  ModelAndView draw(
      @RequestParam Map<String, String> values,
      @RequestParam("/units") UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before) {
    return page.whole(new Filled(units, values, before), List.of());
  }

  /** The same after a button moved something by a step. */
  @PostMapping(path = "/", params = "step")
  ModelAndView step(
      @RequestParam Map<String, String> values,
      @RequestParam("/units") UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before,
      @RequestParam String step) {
    Map<String, String> after = Handle.stepped(values, units, Steps.of(step));
    return page.whole(new Filled(units, after, before), List.of());
  }

  /** A changed set-up, such as a remedy, opened in the form beside what it was changed from. */
  @PostMapping(path = "/", params = "request")
  ModelAndView open(@RequestParam String request, @RequestParam @Nullable UUID before) {
    try {
      return page.whole(filled(RequestText.json(request), null, before), List.of());
    } catch (RequestText.Malformed e) {
      throw new NotFoundException("This is no set-up.");
    }
  }

  /** A form can be told in other units only once what it says is understood. */
  private ModelAndView converted(Filled filled, ObjectNode request, UnitSystem units) {
    if (new SetupReader(page.catalogue()).read(request) instanceof Reading.Refused refused) {
      return refused(filled, refused.problems());
    }
    return page.whole(filled(request, units, filled.before()), List.of());
  }

  private ModelAndView refused(Filled filled, List<Problem> problems) {
    ModelAndView told = page.whole(filled, problems);
    told.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
    return told;
  }

  private Filled start(String from, @Nullable UnitSystem units) {
    Optional<String> demonstration = page.demonstrations().text(from);
    try {
      if (demonstration.isPresent()) {
        return filled(RequestText.json(demonstration.get()), units, null);
      }
      UUID id = UUID.fromString(from);
      return filled(answers.record(id).record().account().request().tree(), units, id);
    } catch (RequestText.Malformed | IllegalArgumentException e) {
      throw new NotFoundException("There is no set-up of this name to start from.");
    }
  }

  /** A request as the form holds it, in other units than its own if they are asked for. */
  private Filled filled(JsonNode request, @Nullable UnitSystem wanted, @Nullable UUID before) {
    Reading reading = new SetupReader(page.catalogue()).read(request);
    if (!(reading instanceof Reading.Accepted accepted)) {
      throw new NotFoundException("The set-up to start from no longer fits the catalogue.");
    }
    UnitSystem own = accepted.setup().units();
    if (wanted == null || wanted == own) {
      return new Filled(own, FormReading.values(request, own), before);
    }
    ObjectNode told = Shelves.request(accepted.setup(), page.catalogue(), wanted);
    return new Filled(wanted, FormReading.values(told, wanted), before);
  }
}
