package org.standproud.advice.envelope;

import java.util.List;
import java.util.Map;

/**
 * How deep the cutter may go, over another quantity of the cut, in the caller's units.
 *
 * @param over the quantity on the other axis
 * @param overUnit its unit
 * @param depthUnit unit of the axial depths
 * @param holds what is true inside
 * @param why why that quantity was chosen
 * @param columns the columns, in rising order
 * @param now the set-up's own value of that quantity
 * @param nowDepth the set-up's own axial depth
 * @param nowInside whether the set-up itself is free
 * @param always cards that stop every depth of every column
 * @param titles titles of the cards named
 * @param steady whether more depth never helped where that was checked
 * @param judged how many set-ups were judged
 */
public record Envelope(
    String over,
    String overUnit,
    String depthUnit,
    String holds,
    String why,
    List<Column> columns,
    double now,
    double nowDepth,
    boolean nowInside,
    List<String> always,
    Map<String, String> titles,
    boolean steady,
    int judged) {

  /** Copies the collections. */
  public Envelope {
    columns = List.copyOf(columns);
    always = List.copyOf(always);
    titles = Map.copyOf(titles);
  }
}
