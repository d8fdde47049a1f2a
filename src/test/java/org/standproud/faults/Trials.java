package org.standproud.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.util.FileSystemUtils;

/**
 * Runs trials by name, prints their figures and keeps them for api-docs/reliability.md. Settings
 * are system properties: {@code test.faults.seed} and those that each trial names.
 */
public final class Trials {

  private static final Map<String, Trial> ALL = new TreeMap<>();

  static {
    ALL.put("clock-jump", new ClockJumpTrial());
    ALL.put("corrupt-row", new CorruptRowTrial());
    ALL.put("database-gone", new DatabaseGoneTrial(5));
    ALL.put("disk-full", new DiskFullTrial());
    ALL.put("fuzz", new FuzzTrial());
    ALL.put("memory", new MemoryTrial());
    ALL.put("replicas", new ReplicasTrial());
    ALL.put("rules-emptied", new RulesEmptiedTrial());
    ALL.put("slow-callers", new SlowCallersTrial());
    ALL.put("soak", new SoakTrial());
  }

  private Trials() {}

  /** The seed of what a trial does by chance. */
  static long seed() {
    return Long.getLong("test.faults.seed", 20261125L);
  }

  /** Every trial there is. */
  static Set<String> names() {
    return ALL.keySet();
  }

  /**
   * Runs trials.
   *
   * @param names which; all of them if none is named
   */
  public static void main(String[] names) throws Exception {
    boolean stood = true;
    for (String name : names.length == 0 ? ALL.keySet().toArray(String[]::new) : names) {
      stood &= stood(name);
    }
    System.exit(stood ? 0 : 1);
  }

  private static boolean stood(String name) throws IOException {
    Figures figures = new Figures();
    Path work = Files.createTempDirectory("standproud-" + name);
    try {
      ALL.get(name).run(work, figures);
      figures.put("stood", "yes");
    } catch (Exception | AssertionError e) {
      e.printStackTrace();
      figures.put("stood", "no: " + String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
      return false;
    } finally {
      FileSystemUtils.deleteRecursively(work);
      figures.keep(name);
      System.out.println("# " + name + "\n" + figures.text());
    }
    return true;
  }
}
