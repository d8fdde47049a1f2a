package org.standproud.web.form;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.CookieValue;
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

/**
 * The page where a set-up is entered. While it is edited it is checked as a draft; submitted, it is
 * checked like any other set-up and recorded.
 */
@Controller
class SetupController {

  private static final String UNITS_KEPT = "units";

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
      @RequestParam(required = false) @Nullable UnitSystem units,
      @CookieValue(name = UNITS_KEPT, required = false) @Nullable String kept) {
    UnitSystem own = UnitSystem.INCH.words().equals(kept) ? UnitSystem.INCH : UnitSystem.METRIC;
    Filled filled =
        from == null || from.isBlank()
            ? new Filled(units == null ? own : units, Map.of(), null)
            : start(from, units);
    // A page opened with GET, not submitted: text typed here before may be restored.
    return page.whole(filled, List.of()).addObject("from", from).addObject("fresh", "yes");
  }

  @PostMapping("/")
  ModelAndView check(
      @RequestParam Map<String, String> values,
      @RequestParam(name = "/units", required = false) @Nullable UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before,
      Principal caller)
      throws InterruptedException {
    Filled filled = filled(values, units, before);
    try {
      UUID id = assessor.assess(filled.request().toString(), caller.getName()).id();
      RedirectView answer = new RedirectView("/assessments/" + id);
      answer.setStatusCode(HttpStatus.SEE_OTHER);
      return new ModelAndView(answer);
    } catch (SetupRejectedException refused) {
      return refused(filled, refused.problems());
    }
  }

  /** A form without units is metric. */
  static Filled filled(
      Map<String, String> values, @Nullable UnitSystem units, @Nullable UUID before) {
    return new Filled(units == null ? UnitSystem.METRIC : units, values, before);
  }

  /** The page with the current draft, for browsers without JavaScript. */
  @PostMapping(path = "/", params = "draft")
  ModelAndView draw(
      @RequestParam Map<String, String> values,
      @RequestParam(name = "/units", required = false) @Nullable UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before) {
    return page.whole(filled(values, units, before), List.of());
  }

  /** The page in other units, whatever its content; a cookie keeps the choice. */
  @PostMapping(path = "/", params = "convert")
  ModelAndView convert(
      @RequestParam Map<String, String> values,
      @RequestParam(name = "/units", required = false) @Nullable UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before,
      @RequestParam UnitSystem convert,
      HttpServletResponse response) {
    ResponseCookie kept =
        ResponseCookie.from(UNITS_KEPT, convert.words())
            .path("/")
            .httpOnly(true)
            .sameSite("Strict")
            .maxAge(Duration.ofDays(365))
            .build();
    response.addHeader(HttpHeaders.SET_COOKIE, kept.toString());
    return page.whole(filled(values, units, before).in(convert), List.of());
  }

  /** The page with the assumed values entered in its fields. */
  @PostMapping(path = "/", params = "assume")
  ModelAndView assume(
      @RequestParam Map<String, String> values,
      @RequestParam(name = "/units", required = false) @Nullable UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before) {
    Filled filled = filled(values, units, before);
    return page.whole(filled.with(page.assumed(filled)), List.of());
  }

  /** The page after a button changed a value by a step. */
  @PostMapping(path = "/", params = "step")
  ModelAndView step(
      @RequestParam Map<String, String> values,
      @RequestParam(name = "/units", required = false) @Nullable UnitSystem units,
      @RequestParam(required = false) @Nullable UUID before,
      @RequestParam String step) {
    Filled filled = filled(values, units, before);
    Map<String, String> after = Handle.stepped(values, filled.units(), Steps.of(step));
    return page.whole(new Filled(filled.units(), after, before), List.of());
  }

  /** A changed set-up, such as a remedy, opened in the form beside the original. */
  @PostMapping(path = "/", params = "request")
  ModelAndView open(@RequestParam String request, @RequestParam @Nullable UUID before) {
    try {
      return page.whole(filled(RequestText.json(request), null, before), List.of());
    } catch (RequestText.Malformed e) {
      throw new NotFoundException("This is no set-up.");
    }
  }

  private ModelAndView refused(Filled filled, List<Problem> problems) {
    ModelAndView whole = page.whole(filled, problems);
    whole.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
    return whole;
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

  /** A request as form values, converted to other units if asked. */
  private Filled filled(JsonNode request, @Nullable UnitSystem wanted, @Nullable UUID before) {
    Reading reading = new SetupReader(page.catalogue()).read(request);
    if (!(reading instanceof Reading.Accepted accepted)) {
      throw new NotFoundException("The set-up to start from no longer fits the catalogue.");
    }
    UnitSystem own = accepted.setup().units();
    Filled filled = new Filled(own, FormReading.values(request, own), before);
    return wanted == null ? filled : filled.in(wanted);
  }
}
