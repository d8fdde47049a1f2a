package org.standproud.web.audit;

import java.security.Principal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;
import org.standproud.assessment.NotReadyException;
import org.standproud.assessment.RecordDetails;
import org.standproud.assessment.acceptance.Acceptances;
import org.standproud.assessment.acceptance.Signature;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.records.StoredRecord;
import org.standproud.audit.replay.NotReplayable;
import org.standproud.audit.replay.Replayer;
import org.standproud.refusal.BadParameterException;
import org.standproud.rules.engine.RuleBase;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.web.recorded.CardLine;
import org.standproud.web.recorded.RecordedAnswers;

/** Pages of one record: its content, its proof, its replay and its acceptances. */
@Controller
class OneRecordPages {

  private final RecordedAnswers answers;
  private final Acceptances acceptances;
  private final Replayer replayer;
  private final RecordDetails details;
  private final RuleBaseHolder shelf;

  OneRecordPages(
      RecordedAnswers answers,
      Acceptances acceptances,
      Replayer replayer,
      RecordDetails details,
      RuleBaseHolder shelf) {
    this.answers = answers;
    this.acceptances = acceptances;
    this.replayer = replayer;
    this.details = details;
    this.shelf = shelf;
  }

  @GetMapping("/records/{id}")
  ModelAndView record(@PathVariable UUID id) {
    return looked(answers.record(id));
  }

  @GetMapping("/records/{id}/replay")
  ModelAndView replay(@PathVariable UUID id) {
    StoredRecord stored = answers.record(id);
    return looked(stored).addObject("replay", replayer.replay(stored.record()));
  }

  @GetMapping("/records/{id}/reassessment")
  ModelAndView today(@PathVariable UUID id) {
    StoredRecord stored = answers.record(id);
    RuleBase rules =
        shelf.ruleBase().orElseThrow(() -> new NotReadyException("no rule base is in service"));
    ModelAndView page = looked(stored);
    try {
      return page.addObject("today", replayer.compare(stored.record(), rules));
    } catch (NotReplayable e) {
      return page.addObject("notReplayable", e.getMessage());
    }
  }

  @PostMapping("/records/{id}/acceptances")
  ModelAndView accept(
      @PathVariable UUID id, @RequestParam Map<String, String> sent, Principal caller)
      throws InterruptedException {
    AcceptanceForm form = AcceptanceForm.of(sent);
    Map<String, String> faults = form.faults();
    if (!faults.isEmpty()) {
      return refused(page(answers.record(id), form, faults));
    }
    try {
      acceptances.accept(id, form.asked(), caller);
      return seeOther(id, form.card());
    } catch (BadParameterException | IllegalArgumentException e) {
      Map<String, String> whole = Map.of("form", String.valueOf(e.getMessage()));
      return refused(page(answers.record(id), form, whole));
    }
  }

  @PostMapping("/records/{id}/acceptances/{acceptance}/withdrawal")
  ModelAndView withdraw(
      @PathVariable UUID id,
      @PathVariable UUID acceptance,
      @RequestParam String name,
      @RequestParam String role,
      @RequestParam String reason,
      @RequestParam String card,
      Principal caller)
      throws InterruptedException {
    try {
      acceptances.withdraw(
          id,
          acceptance,
          new Acceptances.WithdrawalRequest(reason, new Signature(name.strip(), role.strip())),
          caller);
      return seeOther(id, card);
    } catch (BadParameterException | IllegalArgumentException e) {
      AcceptanceForm form = new AcceptanceForm(card, reason, name, role, "", false);
      Map<String, String> whole = Map.of("withdrawal", String.valueOf(e.getMessage()));
      return refused(page(answers.record(id), form, whole));
    }
  }

  private ModelAndView looked(StoredRecord stored) {
    return page(stored, AcceptanceForm.blank(), Map.of());
  }

  private ModelAndView page(StoredRecord stored, AcceptanceForm form, Map<String, String> faults) {
    ModelAndView page = new ModelAndView("record");
    AuditRecord record = stored.record();
    page.addObject("record", record);
    page.addObject("stored", stored);
    page.addObject("verdictMark", record.judged().verdict().replace(' ', '-'));
    page.addObject("gone", stored.gone());
    page.addObject("form", form);
    page.addObject("faults", faults);
    if (!stored.gone()) {
      OpenRecord open = OpenRecord.of(record, details.of(record));
      page.addObject("cards", open.cards());
      page.addObject("facts", open.facts());
      page.addObject("shortened", open.shortened());
      page.addObject("titles", titles(open));
      page.addObject("decided", acceptances.decisions(record.id()).findings());
    }
    return page;
  }

  private static Map<String, CardLine> titles(OpenRecord open) {
    return open.cards().values().stream()
        .flatMap(List::stream)
        .collect(Collectors.toMap(CardLine::id, Function.identity()));
  }

  private static ModelAndView refused(ModelAndView page) {
    page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
    return page;
  }

  private static ModelAndView seeOther(UUID id, String card) {
    RedirectView there = new RedirectView("/records/" + id + "#decided-" + card);
    there.setStatusCode(HttpStatus.SEE_OTHER);
    return new ModelAndView(there);
  }
}
