package org.standproud.web.form;

import java.nio.file.Path;
import java.security.Principal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;
import org.standproud.api.assessing.Assessor;
import org.standproud.api.assessing.NotReady;
import org.standproud.api.assessing.SetupRefused;
import org.standproud.api.problem.NotThere;
import org.standproud.api.shop.SeedCatalogue;
import org.standproud.api.shop.ShopCatalogue;
import org.standproud.mechanics.gathering.DemonstrationSetups;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.reading.CanonicalText;
import org.standproud.setup.reading.Problem;
import org.standproud.setup.reading.Reading;
import org.standproud.setup.reading.RequestText;
import org.standproud.setup.reading.SetupReader;
import org.standproud.web.recorded.RecordedAnswers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The page on which a set-up is described; sent, it is judged like any other and put on record. */
@Controller
class SetupController {

  private final ShopCatalogue shop;
  private final Assessor assessor;
  private final RecordedAnswers answers;
  private final DemonstrationSetups demonstrations;

  SetupController(
      ShopCatalogue shop,
      Assessor assessor,
      RecordedAnswers answers,
      SeedCatalogue seeds,
      @Value("${standproud.catalogue.directory}") Path catalogueFolder) {
    this.shop = shop;
    this.assessor = assessor;
    this.answers = answers;
    this.demonstrations =
        new DemonstrationSetups(
            catalogueFolder.resolve("setups"), seeds.get().orElse(Catalogue.EMPTY));
  }

  /** What the form holds: the units of its plain numbers and what stands in its fields. */
  private record Filled(UnitSystem units, Map<String, String> values) {}

  @GetMapping("/")
  ModelAndView blank(
      @RequestParam(required = false) @Nullable String from,
      @RequestParam(required = false) @Nullable UnitSystem units) {
    Filled filled =
        from == null || from.isBlank()
            ? new Filled(units == null ? UnitSystem.METRIC : units, Map.of())
            : filled(start(from), units);
    return page(filled, List.of(), from);
  }

  @PostMapping("/")
  ModelAndView judge(
      @RequestParam Map<String, String> values,
      @RequestParam("/units") UnitSystem units,
      @RequestParam(required = false) @Nullable UnitSystem convert,
      Principal caller)
      throws InterruptedException {
    ObjectNode request = FormReading.request(values, units);
    if (convert != null) {
      return converted(new Filled(units, values), request, convert);
    }
    try {
      UUID id = assessor.assess(request.toString(), caller.getName()).id();
      RedirectView answer = new RedirectView("/assessments/" + id);
      answer.setStatusCode(HttpStatus.SEE_OTHER);
      return new ModelAndView(answer);
    } catch (SetupRefused refused) {
      return refused(new Filled(units, values), refused.problems());
    }
  }

  /** A form can be told in other units only once what it says is understood. */
  private ModelAndView converted(Filled filled, ObjectNode request, UnitSystem units) {
    if (new SetupReader(catalogue()).read(request) instanceof Reading.Refused refused) {
      return refused(filled, refused.problems());
    }
    return page(filled(request, units), List.of(), null);
  }

  private ModelAndView refused(Filled filled, List<Problem> problems) {
    ModelAndView page = page(filled, problems, null);
    page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
    return page;
  }

  private JsonNode start(String from) {
    Optional<String> demonstration = demonstrations.text(from);
    try {
      return demonstration.isPresent()
          ? RequestText.json(demonstration.get())
          : answers.record(UUID.fromString(from)).record().account().request().tree();
    } catch (RequestText.Malformed | IllegalArgumentException e) {
      throw new NotThere("There is no set-up of this name to start from.");
    }
  }

  /** A request as the form holds it, in other units than its own if they are asked for. */
  private Filled filled(JsonNode request, @Nullable UnitSystem wanted) {
    Reading reading = new SetupReader(catalogue()).read(request);
    if (!(reading instanceof Reading.Accepted accepted)) {
      throw new NotThere("The set-up to start from no longer fits the catalogue.");
    }
    UnitSystem own = accepted.setup().units();
    if (wanted == null || wanted == own) {
      return new Filled(own, FormReading.values(request, own));
    }
    ObjectNode told = CanonicalText.request(accepted.setup(), wanted);
    Shelves.of(catalogue(), wanted).shorten(told);
    return new Filled(wanted, FormReading.values(told, wanted));
  }

  private ModelAndView page(Filled filled, List<Problem> problems, @Nullable String from) {
    FormWriter writer =
        new FormWriter(Shelves.of(catalogue(), filled.units()), filled.values(), problems);
    ModelAndView page = new ModelAndView("setup");
    page.addObject("sections", writer.sections(filled.units()));
    page.addObject("wrong", writer.wrong());
    page.addObject("elsewhere", writer.elsewhere(problems));
    page.addObject("units", filled.units().words());
    page.addObject("other", other(filled.units()).words());
    page.addObject("from", from);
    page.addObject("demonstrations", demonstrations.names());
    return page;
  }

  private static UnitSystem other(UnitSystem units) {
    return units == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH;
  }

  private Catalogue catalogue() {
    return shop.get().orElseThrow(() -> new NotReady(shop.fault()));
  }
}
