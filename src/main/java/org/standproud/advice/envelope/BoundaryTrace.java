package org.standproud.advice.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;
import org.standproud.setup.Setup;

/**
 * Finds, column by column, the level above which a cut is stopped: from the boundary of the
 * previous column by steps that double until free and stopped levels are found, then by bisection.
 * This assumes that more depth never helps; a level half-way down is judged in every fourth column
 * to check it, and where the assumption fails every column is judged from the bottom up instead.
 */
final class BoundaryTrace {

  private static final int CHECK_EVERY = 4;

  private final Setup setup;
  private final EnvelopeAxis across;
  private final Objections objections;
  private final Trials trials;
  private final double[] columns;
  private final double[] depthsM;
  private final List<Edge> edges = new ArrayList<>();
  private boolean steady = true;

  /** Which findings count against a cut. */
  interface Objections {
    List<String> against(Judged judged);
  }

  /**
   * The boundary in one column.
   *
   * @param at SI value of the column
   * @param free number of free levels, from the bottom
   * @param limits cards against the level above; empty if all are free
   */
  record Edge(double at, int free, List<String> limits) {}

  BoundaryTrace(
      Setup setup,
      EnvelopeAxis across,
      Objections objections,
      Trials trials,
      double[] columns,
      double[] depthsM) {
    this.setup = setup;
    this.across = across;
    this.objections = objections;
    this.trials = trials;
    this.columns = columns;
    this.depthsM = depthsM;
    trace();
  }

  List<Edge> edges() {
    return edges;
  }

  boolean steady() {
    return steady;
  }

  private void trace() {
    int guess = depthsM.length / 2;
    for (double at : columns) {
      guess = boundary(guess, level -> free(at, level));
      edges.add(edge(at, guess));
    }
    for (int i = 0; i < edges.size() && steady; i += CHECK_EVERY) {
      Edge edge = edges.get(i);
      steady = edge.free() < 2 || free(edge.at(), edge.free() / 2);
    }
    if (!steady) {
      edges.clear();
      for (double at : columns) {
        int free = 0;
        while (free < depthsM.length && free(at, free)) {
          free++;
        }
        edges.add(edge(at, free));
      }
    }
  }

  private Edge edge(double at, int free) {
    return new Edge(at, free, free == depthsM.length ? List.of() : against(at, free));
  }

  /** Number of free levels from the bottom, given an estimate. */
  private int boundary(int guess, IntPredicate free) {
    int no = depthsM.length;
    int yes = -1;
    int step = 1;
    int level = Math.min(guess, depthsM.length - 1);
    while (yes < 0 || no == depthsM.length) {
      if (free.test(level)) {
        yes = level;
        if (level == depthsM.length - 1) {
          return depthsM.length;
        }
        level = Math.min(no - 1, level + step);
      } else {
        no = level;
        if (level == 0) {
          return 0;
        }
        level = Math.max(yes + 1, level - step);
      }
      step *= 2;
      if (no - yes == 1) {
        return no;
      }
    }
    while (no - yes > 1) {
      int middle = (no + yes) >>> 1;
      if (free.test(middle)) {
        yes = middle;
      } else {
        no = middle;
      }
    }
    return no;
  }

  private boolean free(double at, int level) {
    return against(at, level).isEmpty();
  }

  private List<String> against(double at, int level) {
    return objections.against(trials.of(across.with(setup, at, depthsM[level])));
  }
}
