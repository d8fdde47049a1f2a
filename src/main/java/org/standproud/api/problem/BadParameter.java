package org.standproud.api.problem;

/** A parameter that cannot be used. */
public final class BadParameter extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Names the parameter.
   *
   * @param name its name
   * @param wanted what it may be
   */
  public BadParameter(String name, String wanted) {
    super("The parameter " + name + " cannot be used: " + wanted + ".");
  }
}
