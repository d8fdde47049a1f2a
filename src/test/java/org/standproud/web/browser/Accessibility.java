package org.standproud.web.browser;

import com.deque.html.axecore.results.CheckedNode;
import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What an accessibility checker says of a page that is open: the rules of WCAG 2.0, 2.1 and 2.2,
 * levels A and AA.
 *
 * @param violations what is wrong, by rule and place
 * @param leastContrast least contrast ratio of any text that was measured
 * @param measured how many texts were measured
 */
record Accessibility(List<String> violations, double leastContrast, long measured) {

  private static final List<String> LEVELS =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
  private static final String CONTRAST = "color-contrast";

  /** Looks at the page that is open. */
  static Accessibility of(Browser browser) {
    return of(new AxeBuilder().withTags(LEVELS), browser);
  }

  /** Looks at level AA alone, which has what depends on colours and on the size of targets. */
  static Accessibility ofLook(Browser browser) {
    return of(new AxeBuilder().withTags(List.of("wcag2aa", "wcag22aa")), browser);
  }

  private static Accessibility of(AxeBuilder checker, Browser browser) {
    Results results = checker.setLegacyMode(true).analyze(browser.driver());
    if (results.isErrored()) {
      throw new IllegalStateException(results.getErrorMessage());
    }
    double[] contrasts = contrasts(results).toArray();
    return new Accessibility(
        results.getViolations().stream().flatMap(Accessibility::places).toList(),
        java.util.Arrays.stream(contrasts).min().orElse(Double.NaN),
        contrasts.length);
  }

  private static Stream<String> places(Rule rule) {
    return rule.getNodes().stream()
        .map(node -> rule.getId() + ": " + node.getHtml() + " " + node.getFailureSummary());
  }

  private static java.util.stream.DoubleStream contrasts(Results results) {
    return Stream.concat(results.getPasses().stream(), results.getViolations().stream())
        .filter(rule -> rule.getId().equals(CONTRAST))
        .flatMap(rule -> rule.getNodes().stream())
        .map(CheckedNode::getAny)
        .flatMap(List::stream)
        .map(check -> check.getData())
        .filter(Map.class::isInstance)
        .map(data -> ((Map<?, ?>) data).get("contrastRatio"))
        .filter(Number.class::isInstance)
        .mapToDouble(ratio -> ((Number) ratio).doubleValue())
        .filter(ratio -> ratio > 0);
  }
}
