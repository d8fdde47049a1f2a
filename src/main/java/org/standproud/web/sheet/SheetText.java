package org.standproud.web.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.standproud.advice.Verdict;
import org.standproud.assessment.AssessmentDocument;
import org.standproud.drawing.XmlText;
import org.standproud.rules.card.Severity;
import org.standproud.setup.Setup;
import org.standproud.web.drawing.EndView;
import org.standproud.web.drawing.Loads;
import org.standproud.web.drawing.PlanView;
import org.standproud.web.drawing.PushView;
import org.standproud.web.recorded.FindingView;
import org.standproud.web.recorded.RecordedAnswer;
import org.standproud.web.words.PageWords;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** Writes the sheet of an assessment as XHTML for the PDF renderer. */
@Component
class SheetText {

  private static final int QR_MM = 27;
  private static final double DRAWING_MM = 80;
  private static final double CHART_MM = 84;

  private final ITemplateEngine templates;
  private final PageWords words;

  SheetText(ITemplateEngine templates, PageWords words) {
    this.templates = templates;
    this.words = words;
  }

  /**
   * Writes it.
   *
   * @param recorded the assessment
   * @param plan the passes, if there are cards to judge them
   * @param paper the paper
   * @param room how many findings are printed in full
   */
  String of(RecordedAnswer recorded, Optional<SheetPlan> plan, PaperSize paper, SheetDensity room) {
    Context context = new Context(LocaleContextHolder.getLocale());
    context.setVariable("paper", paper.css());
    boolean planned = plan.isPresent() && plan.get().table() != null;
    addRecord(context, recorded, planned);
    context.setVariable("fix", plan.map(SheetPlan::fix).orElse(null));
    addFindings(context, FindingView.of(recorded), room);
    plan.ifPresent(
        p -> {
          context.setVariable("plan", p);
          context.setVariable(
              "chart", room.chart() ? FittedDrawing.of(p.envelope(), CHART_MM) : null);
        });
    return XmlText.holding(templates.process("sheet", context));
  }

  private void addRecord(Context context, RecordedAnswer recorded, boolean planned) {
    Setup setup = recorded.setup();
    AssessmentDocument answer = recorded.answer();
    Loads loads = Loads.of(recorded.evidence());
    context.setVariable("answer", answer);
    context.setVariable("setup", setup);
    context.setVariable("made", recorded.made());
    context.setVariable("verdictMark", answer.verdict().words().replace(' ', '-'));
    context.setVariable("judged", answer.verdict() != Verdict.NOT_JUDGED);
    context.setVariable("mayRun", answer.verdict().compareTo(Verdict.RUN_WITH_CARE) <= 0);
    context.setVariable("numbers", MachineSettings.of(setup, recorded.evidence(), words, planned));
    context.setVariable("above", FittedDrawing.of(PlanView.of(setup, "plan"), DRAWING_MM));
    context.setVariable("end", FittedDrawing.of(EndView.of(setup, loads, "end"), DRAWING_MM));
    context.setVariable(
        "push", FittedDrawing.of(PushView.of(loads, answer.units(), "push"), DRAWING_MM));
    context.setVariable("code", QrSquare.svg(answer.id().toString(), QR_MM));
  }

  private static void addFindings(Context context, List<FindingView> findings, SheetDensity room) {
    List<FindingView> stops = of(findings, Severity.STOP);
    List<FindingView> cautions = of(findings, Severity.CAUTION);
    context.setVariable("stops", first(stops, room.stops()));
    context.setVariable("cautions", first(cautions, room.cautions()));
    context.setVariable("moreStops", rest(stops, room.stops()));
    context.setVariable("moreCautions", rest(cautions, room.cautions()));
    context.setVariable("notes", rest(of(findings, Severity.NOTE), 0));
  }

  private static List<FindingView> of(List<FindingView> findings, Severity severity) {
    return findings.stream().filter(f -> f.finding().severity() == severity).toList();
  }

  private static List<FindingView> first(List<FindingView> findings, int most) {
    return findings.subList(0, Math.min(most, findings.size()));
  }

  /** The number and ids of further findings, in words; empty if there are none. */
  private static String rest(List<FindingView> findings, int shown) {
    List<FindingView> rest = findings.subList(Math.min(shown, findings.size()), findings.size());
    return rest.isEmpty()
        ? ""
        : rest.size()
            + ": "
            + rest.stream().map(f -> f.finding().card()).collect(Collectors.joining(", "));
  }
}
