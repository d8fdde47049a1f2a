package org.standproud.web.sheet;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.standproud.api.assessing.Answer;
import org.standproud.drawing.XmlText;
import org.standproud.setup.Setup;
import org.standproud.web.drawing.EndView;
import org.standproud.web.drawing.Loads;
import org.standproud.web.drawing.PlanView;
import org.standproud.web.drawing.PushView;
import org.standproud.web.recorded.FindingView;
import org.standproud.web.recorded.RecordedAnswer;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/**
 * Prints the sheet of an assessment as PDF: in black and white, all drawings as lines, every font
 * inside the file, nothing fetched from anywhere.
 */
@Component
class SheetPrinter {

  private static final String FAMILY = "Sheet";
  private static final int MOST_STOPS = 6;
  private static final int MOST_CAUTIONS = 8;
  private static final int QR_MM = 27;
  private static final double DRAWING_MM = 88;

  private final ITemplateEngine templates;

  SheetPrinter(ITemplateEngine templates) {
    this.templates = templates;
  }

  /**
   * Prints it.
   *
   * @param recorded the assessment
   * @param paper the paper
   * @return a PDF file
   */
  byte[] print(RecordedAnswer recorded, PaperSize paper) {
    String page = XmlText.holding(templates.process("sheet", context(recorded, paper)));
    try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
      ByteArrayOutputStream pdf = new ByteArrayOutputStream();
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.useSVGDrawer(drawer);
      useFont(builder, "DejaVuSansCondensed.ttf", 400);
      useFont(builder, "DejaVuSansCondensed-Bold.ttf", 700);
      builder.useUriResolver((base, uri) -> null);
      builder.withHtmlContent(page, null);
      builder.withProducer("Standproud " + recorded.answer().versions().engine());
      builder.toStream(pdf);
      builder.run();
      return pdf.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void useFont(PdfRendererBuilder builder, String file, int weight) {
    builder.useFont(
        () -> font(file),
        FAMILY,
        weight,
        FontStyle.NORMAL,
        true,
        Set.copyOf(EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG)));
  }

  private static InputStream font(String file) {
    InputStream stream = SheetPrinter.class.getResourceAsStream("/sheet/" + file);
    if (stream == null) {
      throw new IllegalStateException("the font " + file + " is not packaged");
    }
    return stream;
  }

  private static Context context(RecordedAnswer recorded, PaperSize paper) {
    Setup setup = recorded.setup();
    Answer answer = recorded.answer();
    Loads loads = Loads.of(recorded.evidence());
    List<FindingView> findings = FindingView.of(recorded);
    Context context = new Context(Locale.ROOT);
    context.setVariable("paper", paper.css());
    context.setVariable("answer", answer);
    context.setVariable("setup", setup);
    context.setVariable("verdictMark", answer.verdict().replace(' ', '-'));
    context.setVariable("numbers", DialledNumbers.of(setup, recorded.evidence()));
    context.setVariable("stops", first(findings, "stop", MOST_STOPS));
    context.setVariable("cautions", first(findings, "caution", MOST_CAUTIONS));
    context.setVariable("more", more(findings));
    context.setVariable("plan", FittedDrawing.of(PlanView.of(setup, "plan"), DRAWING_MM));
    context.setVariable("end", FittedDrawing.of(EndView.of(setup, loads, "end"), DRAWING_MM));
    context.setVariable(
        "push", FittedDrawing.of(PushView.of(loads, answer.units(), "push"), DRAWING_MM));
    context.setVariable("code", QrSquare.svg(answer.id().toString(), QR_MM));
    return context;
  }

  private static List<FindingView> first(List<FindingView> findings, String severity, int most) {
    return findings.stream()
        .filter(f -> f.finding().severity().equals(severity))
        .limit(most)
        .toList();
  }

  /** How many findings the sheet has no room for. */
  private static int more(List<FindingView> findings) {
    return findings.size()
        - first(findings, "stop", MOST_STOPS).size()
        - first(findings, "caution", MOST_CAUTIONS).size();
  }
}
