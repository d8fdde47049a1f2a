package org.standproud.assessment;

/** Renders an exception as the problem that a single request would get. */
public interface RefusalRenderer {

  /**
   * A refusal as a document.
   *
   * @param status the status of a single request
   * @param body the document, to be written as JSON
   */
  record Document(int status, Object body) {}

  /**
   * The document for an exception.
   *
   * @param fault the exception
   */
  Document render(Exception fault);
}
