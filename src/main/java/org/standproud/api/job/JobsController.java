package org.standproud.api.job;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.assessment.NotReadyException;
import org.standproud.assessment.SetupRequest;
import org.standproud.assessment.job.JobDocument;
import org.standproud.assessment.job.RecentJobs;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.ShopCatalogue;

/** Plans whole jobs, every pass judged by the rule base in service. Nothing is recorded. */
@Tag(name = "Jobs", description = "From the blank to the finished plate")
@RestController
@RequestMapping(path = "/v1/jobs", produces = MediaType.APPLICATION_JSON_VALUE)
class JobsController {

  private final RequestBodies bodies;
  private final RuleBaseHolder rules;
  private final ShopCatalogue shop;
  private final RecentJobs recent;

  JobsController(
      RequestBodies bodies, RuleBaseHolder rules, ShopCatalogue shop, RecentJobs recent) {
    this.bodies = bodies;
    this.rules = rules;
    this.shop = shop;
    this.recent = recent;
  }

  @Operation(
      operationId = "planJob",
      summary = "Plan a whole job",
      description =
          "Returns the best route found from the blank to the finished plate: set-ups in order,"
              + " each pass a complete set-up judged on the stock as it stands by then, bench work"
              + " between them, times, and the riskiest pass. The verdict of the job is the worst"
              + " of its passes. Nothing is recorded: send the setup of a pass to /v1/assessments"
              + " to record it; its verdict is the same.")
  @ApiResponse(responseCode = "200", description = "The route, whatever its verdict.")
  @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
  JobDocument plan(HttpServletRequest request) throws IOException {
    return recent.of(
        SetupRequest.of(bodies.text(request)).tree(),
        shop.get().orElseThrow(() -> new NotReadyException(shop.fault())),
        rules.ruleBase().orElseThrow(() -> new NotReadyException("no rule base is in service")));
  }
}
