package org.standproud.faults;

import java.nio.file.Path;

/** Something that goes wrong on purpose. */
@FunctionalInterface
interface Trial {

  /**
   * Brings it about and looks at what becomes of it.
   *
   * @param work an empty folder
   * @param figures takes what is found
   * @throws AssertionError when the service did not stand it
   */
  void run(Path work, Figures figures) throws Exception;
}
