package org.standproud.assessment;

/** Renders what was thrown as the document that a request of its own would be refused with. */
public interface RefusalRenderer {

  /**
   * A refusal as a document.
   *
   * @param status the status a request of its own would be refused with
   * @param body the document, to be written as JSON
   */
  record Document(int status, Object body) {}

  /**
   * The document for a fault.
   *
   * @param fault what was thrown
   */
  Document render(Exception fault);
}
