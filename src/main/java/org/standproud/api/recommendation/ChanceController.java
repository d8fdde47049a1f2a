package org.standproud.api.recommendation;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.assessment.recommendation.HoldingChanceReport;
import org.standproud.assessment.recommendation.RecordedSetups;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.mechanics.sampling.SamplingPlan;
import org.standproud.refusal.BadParameterException;
import org.standproud.setup.Setup;

/** How likely an assessed set-up is to hold, computed without the cards. */
@Tag(name = "Recommendations")
@RestController
@RequestMapping(path = "/v1/assessments/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
class ChanceController {

  private static final int LEAST_DRAWS = 100;
  private static final int MOST_DRAWS = 20_000;

  /** The greatest integer that every JSON parser reads exactly. */
  private static final long MOST_SEED = (1L << 53) - 1;

  private final RecordedSetups setups;

  ChanceController(RecordedSetups setups) {
    this.setups = setups;
  }

  @Operation(
      operationId = "getChance",
      summary = "Get how likely it is to hold, and what to measure first",
      description =
          "Draws every unknown of the set-up and of the models from its band, with a given seed,"
              + " and counts the draws in which every margin of the hold is at least one. The"
              + " same seed and number of draws give the same answer.")
  @ApiResponse(
      responseCode = "200",
      description = "The chance, with its standard error and each unknown's share of the doubt.",
      content = @Content(schema = @Schema(implementation = HoldingChanceReport.class)))
  @GetMapping("/chance")
  ResponseEntity<byte[]> chance(
      @PathVariable UUID id,
      @Parameter(
              description = "number of draws",
              schema =
                  @Schema(
                      type = "integer",
                      minimum = "100",
                      maximum = "20000",
                      defaultValue = "256"))
          @RequestParam(defaultValue = "256")
          int draws,
      @Parameter(
              description = "the seed",
              schema =
                  @Schema(
                      type = "integer",
                      minimum = "0",
                      maximum = "9007199254740991",
                      defaultValue = "20261125"))
          @RequestParam(defaultValue = "20261125")
          long seed) {
    SamplingPlan plan = plan(draws, seed);
    HoldingChanceReport report = HoldingChanceReport.of(id, chance(setups.of(id), plan));
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_JSON)
        .body(PlainJson.canonical(report).utf8());
  }

  private static SamplingPlan plan(int draws, long seed) {
    if (draws < LEAST_DRAWS || draws > MOST_DRAWS) {
      throw new BadParameterException("draws", "from " + LEAST_DRAWS + " to " + MOST_DRAWS);
    }
    if (seed < 0 || seed > MOST_SEED) {
      throw new BadParameterException("seed", "from 0 to " + MOST_SEED);
    }
    return new SamplingPlan(draws, seed, SamplingPlan.USUAL.leastMargin());
  }

  private static HoldingChance chance(Setup setup, SamplingPlan plan) {
    try {
      return HoldingChance.of(setup, plan)
          .orElseThrow(
              () -> nothingToSample("The cutter passes beside the stock; nothing has to hold."));
    } catch (OutsideValidity e) {
      throw nothingToSample("It cannot be computed: " + e.getMessage() + ".");
    }
  }

  private static ErrorResponseException nothingToSample(String why) {
    ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.CONFLICT, why);
    return new ErrorResponseException(HttpStatus.CONFLICT, problem, null);
  }
}
