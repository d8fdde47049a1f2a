package org.standproud.web.job;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.standproud.assessment.NotReadyException;
import org.standproud.assessment.job.JobDocument;
import org.standproud.assessment.job.JobRejectedException;
import org.standproud.assessment.job.RecentJobs;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.Problem;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.ShopCatalogue;
import org.standproud.web.words.PageWords;
import tools.jackson.databind.json.JsonMapper;

/**
 * Plans a whole job. The fields are in the address, so that a route can be reloaded, bookmarked and
 * printed. Nothing is recorded.
 */
@Controller
class JobPages {

  private static final String EXAMPLE = "example";

  private final RuleBaseHolder rules;
  private final ShopCatalogue shop;
  private final RecentJobs recent;
  private final PageWords words;

  JobPages(RuleBaseHolder rules, ShopCatalogue shop, RecentJobs recent, PageWords words) {
    this.rules = rules;
    this.shop = shop;
    this.recent = recent;
    this.words = words;
  }

  /** The form, empty, as typed, or with an example. */
  @GetMapping("/jobs")
  ModelAndView form(@RequestParam Map<String, String> values) throws IOException {
    return page(
        new JobForm(values.containsKey(EXAMPLE) ? example() : values), List.of(), null);
  }

  private static Map<String, String> example() throws IOException {
    try (InputStream text = new ClassPathResource("jobs/example.json").getInputStream()) {
      return JobForm.values(JsonMapper.shared().readTree(text));
    }
  }

  /** The route. */
  @GetMapping("/jobs/route")
  ModelAndView route(@RequestParam Map<String, String> values) {
    JobForm form = new JobForm(values);
    try {
      JobDocument document =
          recent.of(
              form.request(),
              catalogue(),
              rules
                  .ruleBase()
                  .orElseThrow(() -> new NotReadyException("no rule base is in service")));
      return page(form, List.of(), document);
    } catch (JobRejectedException e) {
      ModelAndView refused = page(form, e.problems(), null);
      refused.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
      return refused;
    }
  }

  private ModelAndView page(
      JobForm form, List<Problem> problems, @Nullable JobDocument document) {
    return new ModelAndView("jobs")
        .addObject("units", form.units().words())
        .addObject("sections", form.sections(problems, catalogue(), words))
        .addObject("wrong", !problems.isEmpty())
        .addObject("elsewhere", JobForm.elsewhere(problems))
        .addObject("document", document)
        .addObject("card", document == null ? null : RouteCard.of(document.plan(), words));
  }

  private Catalogue catalogue() {
    return shop.get().orElseThrow(() -> new NotReadyException(shop.fault()));
  }
}
