package org.standproud.web.sheet;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.ShopCatalogue;
import org.standproud.web.recorded.RecordedAnswer;
import org.standproud.web.recorded.RecordedAnswers;

/** The printed sheet of an assessment. */
@Controller
class SheetController {

  private final RecordedAnswers answers;
  private final RuleBaseHolder rules;
  private final ShopCatalogue shop;
  private final SheetPrinter printer;

  SheetController(
      RecordedAnswers answers, RuleBaseHolder rules, ShopCatalogue shop, SheetPrinter printer) {
    this.answers = answers;
    this.rules = rules;
    this.shop = shop;
    this.printer = printer;
  }

  @GetMapping("/assessments/{id}/sheet.pdf")
  ResponseEntity<byte[]> sheet(
      @PathVariable UUID id,
      @RequestParam(defaultValue = "a4") PaperSize paper,
      @RequestParam(required = false) @Nullable Double remove) {
    RecordedAnswer recorded = answers.answer(id);
    Optional<SheetPlan> plan =
        rules
            .ruleBase()
            .map(
                ruleBase ->
                    SheetPlan.of(
                        recorded.setup(),
                        remove,
                        ruleBase,
                        shop.get().orElse(Catalogue.EMPTY),
                        recorded.answer().verdict()));
    ContentDisposition name = ContentDisposition.inline().filename("set-up-" + id + ".pdf").build();
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_PDF)
        .header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
        .body(printer.print(recorded, plan, paper));
  }
}
