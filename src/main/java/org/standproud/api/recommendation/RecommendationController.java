package org.standproud.api.recommendation;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import java.util.function.BiFunction;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.advice.compare.ComparedSetups;
import org.standproud.advice.envelope.Envelope;
import org.standproud.advice.envelope.SafeEnvelope;
import org.standproud.advice.plan.PassPlan;
import org.standproud.advice.remedy.Remedies;
import org.standproud.advice.sensitivity.SensitivityReport;
import org.standproud.advice.whatif.Trials;
import org.standproud.advice.workholding.OtherHolds;
import org.standproud.assessment.NotReadyException;
import org.standproud.assessment.recommendation.RecentRemedies;
import org.standproud.assessment.recommendation.Recommendation;
import org.standproud.assessment.recommendation.RecordedSetups;
import org.standproud.drawing.EnvelopeChart;
import org.standproud.refusal.BadParameterException;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.units.QuantityKind;
import org.standproud.setup.units.UnitCode;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.ShopCatalogue;

/** Recommendations for an assessed set-up, every change judged by the rule base in service. */
@Tag(name = "Recommendations", description = "What to change, and how far the cut may go")
@RestController
@RequestMapping(path = "/v1/assessments/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
class RecommendationController {

  private static final double LEAST_STOCK_M = 1e-5;
  private static final double GREATEST_STOCK_M = 0.2;

  private final RecordedSetups setups;
  private final RuleBaseHolder rules;
  private final ShopCatalogue shop;
  private final RecentRemedies recent;

  RecommendationController(
      RecordedSetups setups, RuleBaseHolder rules, ShopCatalogue shop, RecentRemedies recent) {
    this.setups = setups;
    this.rules = rules;
    this.shop = shop;
    this.recent = recent;
  }

  @Operation(
      operationId = "getRemedies",
      summary = "Get the nearest set-ups that work",
      description =
          "For each stop and caution the smallest changes that clear it, alone and together,"
              + " each judged again before it is returned, with its cost; also says when nothing"
              + " works.")
  @ApiResponse(responseCode = "200", description = "The remedies, best first.")
  @GetMapping("/remedies")
  Recommendation<Remedies> remedies(@PathVariable UUID id) {
    return recommend(id, (setup, ruleBase) -> recent.of(setup, ruleBase, shelves()));
  }

  @Operation(
      operationId = "getOtherHolds",
      summary = "Get other ways to hold the job",
      description =
          "Angle plate, side of the vise and flat on the table, judged, with their" + " time.")
  @ApiResponse(responseCode = "200", description = "The other holds, best first.")
  @GetMapping("/other-holds")
  Recommendation<OtherHolds> otherHolds(@PathVariable UUID id) {
    return recommend(
        id,
        (setup, ruleBase) ->
            OtherHolds.of(
                setup, recent.of(setup, ruleBase, shelves()).viseHolds(), ruleBase, shelves()));
  }

  @Operation(
      operationId = "getQuestions",
      summary = "Get what to measure first",
      description = "Each unknown with the answer at either end of it.")
  @ApiResponse(responseCode = "200", description = "The suggestions, most useful first.")
  @GetMapping("/questions")
  Recommendation<SensitivityReport> questions(@PathVariable UUID id) {
    return recommend(id, SensitivityReport::of);
  }

  @Operation(
      operationId = "getEnvelope",
      summary = "Get how far the cut may go",
      description =
          "The region of depth and width, and of depth and speed, without a stop, with the card"
              + " that limits each edge.")
  @ApiResponse(responseCode = "200", description = "The safe envelope.")
  @GetMapping("/envelope")
  Recommendation<SafeEnvelope> envelope(@PathVariable UUID id) {
    return recommend(id, SafeEnvelope::of);
  }

  @Operation(
      operationId = "getEnvelopeDrawing",
      summary = "Draw how far the cut may go",
      description = "SVG of one of the two envelopes.")
  @ApiResponse(
      responseCode = "200",
      description = "The drawing.",
      content = @Content(schema = @Schema(type = "string")))
  @GetMapping(path = "/envelope.svg", produces = "image/svg+xml")
  ResponseEntity<byte[]> envelopeDrawing(
      @PathVariable UUID id,
      @Parameter(description = "quantity on the other axis: the cut or the spindle speed")
          @RequestParam(name = "over", defaultValue = "cut")
          EnvelopeKind over) {
    Trials trials = new Trials(ruleBase());
    Envelope envelope =
        switch (over) {
          case CUT -> SafeEnvelope.cut(setups.of(id), trials, SafeEnvelope.FINENESS);
          case SPEED -> SafeEnvelope.speed(setups.of(id), trials, SafeEnvelope.FINENESS);
        };
    return ResponseEntity.ok()
        .contentType(MediaType.valueOf("image/svg+xml"))
        .body(EnvelopeChart.of(envelope, "envelope").getBytes(StandardCharsets.UTF_8));
  }

  @Operation(
      operationId = "getPlan",
      summary = "Get a plan of passes",
      description =
          "Roughing and finishing passes for the stock to remove, each judged, with where to"
              + " stop and measure.")
  @ApiResponse(responseCode = "200", description = "The passes in order.")
  @GetMapping("/plan")
  Recommendation<PassPlan> plan(
      @PathVariable UUID id,
      @Parameter(description = "stock to remove, in the length unit of the set-up")
          @RequestParam("remove")
          double remove) {
    return recommend(id, (setup, ruleBase) -> PassPlan.of(setup, stockM(remove, setup), ruleBase));
  }

  @Operation(
      operationId = "compareAssessments",
      summary = "Compare two assessments",
      description = "What changed in the set-up, and which findings moved by how much.")
  @ApiResponse(
      responseCode = "200",
      description = "The comparison, starting from this" + " assessment.")
  @GetMapping("/compare")
  Recommendation<ComparedSetups> compare(
      @PathVariable UUID id,
      @Parameter(description = "id of the other assessment") @RequestParam("with") UUID other) {
    Setup after = setups.of(other);
    return recommend(id, (before, ruleBase) -> ComparedSetups.of(before, after, ruleBase));
  }

  private static double stockM(double remove, Setup setup) {
    UnitCode unit = QuantityKind.LENGTH.unit(setup.units());
    double stockM = unit.toSi(remove);
    if (!(stockM >= LEAST_STOCK_M && stockM <= GREATEST_STOCK_M)) {
      throw new BadParameterException(
          "remove",
          "from "
              + unit.fromSi(LEAST_STOCK_M)
              + " to "
              + unit.fromSi(GREATEST_STOCK_M)
              + " "
              + unit.code());
    }
    double mostM = PassPlan.mostM(setup);
    if (stockM >= mostM) {
      throw new BadParameterException(
          "remove", "less than the " + unit.fromSi(mostM) + " " + unit.code() + " there are");
    }
    return stockM;
  }

  private <T> Recommendation<T> recommend(UUID id, BiFunction<Setup, RuleBase, T> recommend) {
    RuleBase ruleBase = ruleBase();
    return new Recommendation<>(
        id, ruleBase.revision().id(), recommend.apply(setups.of(id), ruleBase));
  }

  private RuleBase ruleBase() {
    return rules.ruleBase().orElseThrow(() -> new NotReadyException("no rule base is in service"));
  }

  private Catalogue shelves() {
    return shop.get().orElseThrow(() -> new NotReadyException(shop.fault()));
  }
}
