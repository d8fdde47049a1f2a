package org.standproud.web.recorded;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Finding;
import org.standproud.advice.Quantity;
import org.standproud.assessment.FindingDocument;
import org.standproud.assessment.TraceDocument;
import org.standproud.assessment.acceptance.ShownAcceptance;
import org.standproud.rules.card.Source;
import org.standproud.rules.trace.Kind;
import org.standproud.setup.UnitSystem;
import org.standproud.web.drawing.DistanceBar;

/**
 * A finding as page and sheet show it.
 *
 * @param finding the finding
 * @param mark icon of its severity and kind
 * @param word severity and kind in words
 * @param values the numbers the card read
 * @param source its source, in one line
 * @param bar how far it is from the limit, as SVG; null if no number decides
 * @param acceptances acceptances at the time of the answer
 */
public record FindingView(
    Finding finding,
    String mark,
    String word,
    List<String> values,
    String source,
    @Nullable String bar,
    List<String> acceptances) {

  /** Copies the lists. */
  public FindingView {
    values = List.copyOf(values);
    acceptances = List.copyOf(acceptances);
  }

  /** The findings of an answer, most severe first. */
  public static List<FindingView> of(RecordedAnswer recorded) {
    UnitSystem units = recorded.answer().units();
    return recorded.answer().findings().stream()
        .map(f -> of(f.finding(), recorded.margins(), units, acceptances(f)))
        .toList();
  }

  /**
   * The findings of unrecorded advice, most severe first.
   *
   * @param findings the findings
   * @param margins how far each card is from flipping, by its id
   * @param units the units of the reader
   */
  public static List<FindingView> of(
      List<Finding> findings, Map<String, TraceDocument.Distance> margins, UnitSystem units) {
    return findings.stream().map(f -> of(f, margins, units, List.of())).toList();
  }

  private static FindingView of(
      Finding finding,
      Map<String, TraceDocument.Distance> margins,
      UnitSystem units,
      List<String> acceptances) {
    boolean open = finding.kind() == Kind.OPEN;
    TraceDocument.@Nullable Distance margin =
        finding.distance() == null ? null : margins.get(finding.card());
    return new FindingView(
        finding,
        finding.severity() + (open ? "-open" : ""),
        finding.severity() + (open ? ", can't tell yet" : ""),
        finding.values().stream().map(FindingView::fact).toList(),
        line(finding.source()),
        margin == null ? null : DistanceBar.of(margin, finding.card(), units),
        acceptances);
  }

  private static List<String> acceptances(FindingDocument answered) {
    List<ShownAcceptance> given = answered.acceptances();
    return given == null ? List.of() : given.stream().map(FindingView::signature).toList();
  }

  private static String signature(ShownAcceptance accepted) {
    return "%s, %s, signed off until %s: %s (%s)"
        .formatted(
            accepted.by().name(),
            accepted.by().role(),
            accepted.expires(),
            accepted.reason(),
            accepted.state());
  }

  /** A fact with its value, as in "grip depth 8 mm" or "slip margin 0.21 (0.13 to 0.4)". */
  public static String fact(Quantity quantity) {
    Object value = quantity.value();
    if (value == null) {
      return quantity.name() + ": not known";
    }
    String unit = quantity.unit() == null ? "" : " " + quantity.unit();
    Double low = quantity.low();
    Double high = quantity.high();
    String band =
        low == null || high == null ? "" : " (" + number(low) + " to " + number(high) + ")";
    return quantity.name() + " " + word(value) + band + unit;
  }

  /** The likely value alone with its unit, as in "0.21" or "8 mm". */
  public static String figure(Quantity quantity) {
    Object value = quantity.value();
    String unit = quantity.unit() == null ? "" : " " + quantity.unit();
    return value == null ? "not known" : word(value) + unit;
  }

  private static String word(Object value) {
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    return value instanceof Number number ? number(number.doubleValue()) : value.toString();
  }

  private static String number(double value) {
    return ThreeFigures.of(value);
  }

  /** The source of a card, in one line. */
  public static String line(Source source) {
    String kind = source.kind().words();
    // A reference may begin by repeating the kind of source.
    boolean saysItself = source.reference().startsWith(kind);
    return String.join(
        ", ",
        Stream.of(saysItself ? "" : kind, source.reference(), source.edition(), source.page())
            .filter(part -> part != null && !part.isBlank())
            .toList());
  }
}
