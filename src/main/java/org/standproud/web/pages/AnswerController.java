package org.standproud.web.pages;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.standproud.advice.Verdict;
import org.standproud.assessment.AssessmentDocument;
import org.standproud.audit.records.StoredRecord;
import org.standproud.rules.card.Severity;
import org.standproud.setup.Setup;
import org.standproud.web.drawing.EndView;
import org.standproud.web.drawing.Loads;
import org.standproud.web.drawing.PlanView;
import org.standproud.web.drawing.PushView;
import org.standproud.web.recorded.FindingView;
import org.standproud.web.recorded.RecordedAnswer;
import org.standproud.web.recorded.RecordedAnswers;

/** The page of an assessment: verdict, drawings, reasons. */
@Controller
class AnswerController {

  private final RecordedAnswers answers;

  AnswerController(RecordedAnswers answers) {
    this.answers = answers;
  }

  @GetMapping("/assessments/{id}")
  String answer(@PathVariable UUID id, Model model) {
    StoredRecord record = answers.record(id);
    RecordedAnswer recorded = RecordedAnswer.of(record.record().account());
    Setup setup = recorded.setup();
    AssessmentDocument answer = recorded.answer();
    Loads loads = Loads.of(recorded.evidence());
    model.addAttribute("answer", answer);
    model.addAttribute("setup", setup);
    model.addAttribute("made", recorded.made());
    model.addAttribute("sequence", record.stored().sequence());
    List<FindingView> findings = FindingView.of(recorded);
    model.addAttribute("findings", findings);
    model.addAttribute(
        "first",
        findings.stream()
            .filter(f -> f.finding().severity() != Severity.NOTE)
            .findFirst()
            .orElse(null));
    model.addAttribute("judged", answer.verdict() != Verdict.NOT_JUDGED);
    model.addAttribute("verdictMark", verdictMark(answer.verdict()));
    model.addAttribute("facts", answer.evidence().stream().map(FindingView::fact).toList());
    model.addAttribute("plan", PlanView.of(setup, "plan"));
    model.addAttribute("end", EndView.of(setup, loads, "end"));
    model.addAttribute("push", PushView.of(loads, answer.units(), "push"));
    return "answer";
  }

  /** The icon of a verdict. */
  static String verdictMark(Verdict verdict) {
    return verdict.words().replace(' ', '-');
  }
}
