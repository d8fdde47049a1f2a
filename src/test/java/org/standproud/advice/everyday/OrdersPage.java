package org.standproud.advice.everyday;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The page that shows what the orders of the trade come to in scores. */
final class OrdersPage {

  private static final String HEAD =
      """
      # Orders of the trade

      Written by `OrdersTest`; after a change to cards, mechanics or advice write it anew and read \
      what changed:

          mvn -Pregenerate verify

      Each order says which of two set-ups a practitioner prefers, and is tried on a grid of \
      everyday set-ups: the better one must score strictly higher. Common practice, no source. \
      Scores are not rounded; [scoring.md](scoring.md) says how they are made.
      """;

  /**
   * A part of an order that mechanics does not bear out.
   *
   * @param pairs how many pairs of the grid come out the other way
   * @param why why, and how it was computed another way
   */
  record Contradiction(long pairs, String why) {}

  static final Map<String, Contradiction> CONTRADICTED = contradicted();

  private OrdersPage() {}

  private static Map<String, Contradiction> contradicted() {
    Map<String, Contradiction> known = new LinkedHashMap<>();
    known.put(
        "load into the fixed jaw",
        new Contradiction(
            1,
            "Packing 5 mm below the jaw top lies above the middle third of the grip. Moments by"
                + " hand give N w / H against a push into the fixed jaw and N (g - w) / (H + g)"
                + " against one off it: for w = 5, g = 36, H = 44 mm that is 0.11 N and 0.39 N. A"
                + " heavy pass on the tallest plate then springs more when it is pushed into the"
                + " fixed jaw, and in that pair it just passes the limit of a stop. Lower the"
                + " packing; do not turn the feed."));
    known.put(
        "climb slowly by hand",
        new Contradiction(
            9,
            "A conventional tooth pulls at the first touch only where the tangential force beats"
                + " the thrust, tan(phi) > Fr / Ft with cos(phi) = 1 - 2 ae / D. For 0.3 mm with a"
                + " 20 mm cutter phi is 14 degrees and tan(phi) 0.25, under the 0.3 and more that"
                + " thin chips give for Fr / Ft: the first touch presses too. In the steady cut the"
                + " zeroth order limit of a plate that is soft across goes as 1 over 2 K phi + phi"
                + " squared for climb and 2 K phi - phi squared for conventional (Altintas and"
                + " Budak 1995, small arc, K = Fr / Ft): twice the depth or more for conventional."
                + " So on a slack screw conventional is chosen, also where drag would hold the"
                + " table; climb is no longer marked down for the hand wheel there. Where the step"
                + " is wide enough to pull, DIR-012 says how to start."));
    known.put(
        "finish on the rim",
        new Contradiction(
            3,
            "On the plate of 12 mm a 63 mm cutter at its rim takes at most 0.79 of the feed per"
                + " tooth as chip (twice the root of x - x squared with x = 12 / 63), less the"
                + " entering angle. At the 0.05 mm that a slack screw allows, that is about the"
                + " radius of the edge, and in half of the draws it rubs. Where the screw is"
                + " preloaded the feed can be what thins to a sound chip, and the order comes"
                + " out."));
    known.put(
        "roughing on chipped edges",
        new Contradiction(
            6,
            "The hold bears it, and CUT-005 says so. In steel the higher force of chipped edges makes"
                + " cutter and plate swing by more than a chip, on a spindle whose stiffness and"
                + " damping were not measured, so the caution is about the cutter and not about the"
                + " hold. A tap test of the spindle would settle it."));
    return known;
  }

  static long contradicted(String id) {
    Contradiction known = CONTRADICTED.get(id);
    return known == null ? 0 : known.pairs();
  }

  static String written(Map<String, List<Order.Outcome>> outcomes) {
    StringBuilder page = new StringBuilder(HEAD);
    page.append("\n| order | pairs | the other way round |\n|---|---|---|\n");
    outcomes.forEach(
        (id, pairs) ->
            page.append("| ")
                .append(id)
                .append(" | ")
                .append(pairs.size())
                .append(" | ")
                .append(reversed(pairs))
                .append(" |\n"));
    page.append("\n## Where mechanics says otherwise\n");
    CONTRADICTED.forEach(
        (id, known) ->
            page.append("\n* **").append(id).append("**: ").append(known.why()).append('\n'));
    Orders.all().forEach(order -> page.append(table(order, outcomes.get(order.id()))));
    return page.toString();
  }

  static String table(Order order, List<Order.Outcome> pairs) {
    StringBuilder table = new StringBuilder("\n## " + order.id() + "\n\n" + order.claim() + ".\n");
    table.append("\n| set-up | better | worse | better: verdict | worse: verdict | |\n");
    table.append("|---|---|---|---|---|---|\n");
    pairs.forEach(pair -> table.append(pair.row()).append('\n'));
    return table.toString();
  }

  static long reversed(List<Order.Outcome> pairs) {
    return pairs.stream().filter(pair -> !pair.holds()).count();
  }
}
