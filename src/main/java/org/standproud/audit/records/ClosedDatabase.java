package org.standproud.audit.records;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;

/**
 * Lets connections go whose H2 database has closed itself, as it does when the disk is full. Once
 * none is left, the next opens the file anew; else the service would have to be restarted. Named to
 * the pool by class, so public.
 */
public final class ClosedDatabase implements SQLExceptionOverride {

  /** H2's DATABASE_IS_CLOSED. */
  private static final String CLOSED = "90098";

  /** Made by the pool. */
  public ClosedDatabase() {}

  @java.lang.Override // The interface has an Override of its own.
  public Override adjudicate(SQLException e) {
    return CLOSED.equals(e.getSQLState()) ? Override.MUST_EVICT : Override.CONTINUE_EVICT;
  }
}
