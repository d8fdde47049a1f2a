package org.standproud;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Callers who ask the same question at the same time. */
public final class AtOnce {

  private static final int CALLERS = 8;

  private AtOnce() {}

  /** The answers, each object once. */
  public static <T> Set<T> answers(Callable<T> question) throws Exception {
    ExecutorService callers = Executors.newFixedThreadPool(CALLERS);
    try {
      CyclicBarrier together = new CyclicBarrier(CALLERS);
      List<Future<T>> asked = new ArrayList<>();
      for (int i = 0; i < CALLERS; i++) {
        asked.add(
            callers.submit(
                () -> {
                  together.await();
                  return question.call();
                }));
      }
      Set<T> objects = Collections.newSetFromMap(new IdentityHashMap<>());
      for (Future<T> one : asked) {
        objects.add(one.get());
      }
      return objects;
    } finally {
      callers.shutdown();
    }
  }
}
