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
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.springframework.stereotype.Component;
import org.standproud.web.recorded.RecordedAnswer;

/**
 * Prints the sheet of an assessment as PDF: black and white, drawings as vectors, fonts embedded,
 * no external resources.
 */
@Component
class SheetPrinter {

  private static final String FAMILY = "Sheet";
  private static final int MOST_PAGES = 2;

  private final SheetText text;

  SheetPrinter(SheetText text) {
    this.text = text;
  }

  /**
   * Prints it, on two pages if at all possible.
   *
   * @param recorded the assessment
   * @param plan the passes, if there are cards to judge them
   * @param paper the paper
   * @return a PDF file
   */
  byte[] print(RecordedAnswer recorded, Optional<SheetPlan> plan, PaperSize paper) {
    byte[] pdf = new byte[0];
    for (SheetDensity room : SheetDensity.values()) {
      pdf = set(text.of(recorded, plan, paper, room), recorded.answer().versions().engine());
      if (pages(pdf) <= MOST_PAGES) {
        return pdf;
      }
    }
    return pdf;
  }

  private static int pages(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] set(String page, String engine) {
    try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
      ByteArrayOutputStream pdf = new ByteArrayOutputStream();
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.useSVGDrawer(drawer);
      useFont(builder, "DejaVuSansCondensed.ttf", 400);
      useFont(builder, "DejaVuSansCondensed-Bold.ttf", 700);
      builder.useUriResolver((base, uri) -> null);
      builder.withHtmlContent(page, null);
      builder.withProducer("Standproud " + engine);
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
}
