package org.standproud.api.rulebase;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.units.QuantityKind;

/** The facts that rule cards can use. */
@Tag(name = "Rules")
@RestController
class VocabularyController {

  /**
   * A fact that cards can use.
   *
   * @param name its name in cards and answers
   * @param type number, list of numbers, word, or yes or no
   * @param meaning its meaning
   * @param formula the class of the formula that gives it, or that the request states it
   * @param field the field of the request that states it, absent if it is computed
   * @param unit unit of its numbers; absent for a pure number
   * @param least lower bound
   * @param greatest upper bound
   * @param words the possible words
   */
  record Term(
      String name,
      String type,
      String meaning,
      String formula,
      @Nullable FieldPointer field,
      @Nullable String unit,
      @Nullable Double least,
      @Nullable Double greatest,
      @Nullable List<String> words) {

    static Term of(Fact fact, UnitSystem units) {
      Fact.Number number = fact.number();
      if (number != null) {
        QuantityKind kind = number.kind();
        return new Term(
            fact.name(),
            fact.type() instanceof Fact.Numbers ? "list of numbers" : "number",
            fact.meaning(),
            fact.formula(),
            fact.field(),
            kind == QuantityKind.NUMBER ? null : kind.unit(units).code(),
            kind.show(number.least(), units).value(),
            kind.show(number.greatest(), units).value(),
            null);
      }
      List<String> words = fact.type() instanceof Fact.Word word ? word.allowed() : null;
      String type = words == null ? "yes or no" : "word";
      return new Term(
          fact.name(), type, fact.meaning(), fact.formula(), fact.field(), null, null, null, words);
    }
  }

  @Operation(
      operationId = "getVocabulary",
      summary = "List the facts that cards can use",
      description = "Each with its meaning, unit, range and formula.")
  @ApiResponse(responseCode = "200", description = "Every fact.")
  @GetMapping(path = "/v1/vocabulary", produces = MediaType.APPLICATION_JSON_VALUE)
  List<Term> vocabulary(@RequestParam(defaultValue = "metric") UnitSystem units) {
    return Vocabulary.all().stream().map(fact -> Term.of(fact, units)).toList();
  }
}
