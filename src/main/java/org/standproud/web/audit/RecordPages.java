package org.standproud.web.audit;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.standproud.advice.Verdict;
import org.standproud.audit.records.RecordExport;
import org.standproud.audit.records.RecordPage;
import org.standproud.audit.records.Records;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.shop.RuleBaseHolder;

/** Pages to search, export and verify records. */
@Controller
class RecordPages {

  private static final int MOST = 50;

  private final Records records;
  private final RuleBaseHolder shelf;

  RecordPages(Records records, RuleBaseHolder shelf) {
    this.records = records;
    this.shelf = shelf;
  }

  @GetMapping("/records")
  String search(
      @RequestParam Map<String, String> sent,
      @RequestParam(required = false) @Nullable String cursor,
      Model model) {
    SearchForm form = SearchForm.of(sent);
    RecordPage page = records.search(form.query(), MOST, cursor);
    model.addAttribute("form", form);
    model.addAttribute("faults", form.faults());
    model.addAttribute("records", page.records());
    model.addAttribute("next", page.next());
    model.addAttribute("verdicts", verdicts());
    model.addAttribute("severities", List.of(Severity.values()));
    model.addAttribute("cards", cards());
    return "records";
  }

  @GetMapping("/records/all.csv")
  void csv(@RequestParam Map<String, String> sent, HttpServletResponse response)
      throws IOException {
    file(response, "text/csv", "records.csv");
    new RecordExport(records).csv(SearchForm.of(sent).query(), response.getWriter());
  }

  @GetMapping("/records/all.ndjson")
  void ndjson(@RequestParam Map<String, String> sent, HttpServletResponse response)
      throws IOException {
    file(response, "application/x-ndjson", "records.ndjson");
    new RecordExport(records).ndjson(SearchForm.of(sent).query(), response.getWriter());
  }

  @GetMapping("/records/chain")
  String chain(@RequestParam(required = false) @Nullable Long place, Model model) {
    model.addAttribute("report", records.verify());
    model.addAttribute("place", place);
    return "chain";
  }

  private List<String> cards() {
    return shelf
        .ruleBase()
        .map(base -> base.cards().stream().map(CompiledCard::id).toList())
        .orElse(List.of());
  }

  private static List<String> verdicts() {
    return java.util.Arrays.stream(Verdict.values()).map(Verdict::words).toList();
  }

  private static void file(HttpServletResponse response, String type, String name) {
    response.setContentType(type);
    response.setCharacterEncoding(StandardCharsets.UTF_8.name());
    response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"");
  }
}
