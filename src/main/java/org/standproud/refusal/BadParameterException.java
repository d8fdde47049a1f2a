package org.standproud.refusal;

/** A parameter that cannot be used. */
public final class BadParameterException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Names the parameter.
   *
   * @param name its name
   * @param wanted what it may be
   */
  public BadParameterException(String name, String wanted) {
    super(RefusalKind.BAD_PARAMETER, "The parameter " + name + " cannot be used: " + wanted + ".");
  }
}
