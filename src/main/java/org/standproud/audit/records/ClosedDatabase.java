package org.standproud.audit.records;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;

/**
 * Closes connections whose H2 database has closed itself, as it does when the disk is full. Once
 * none is left, the next one opens the file again; otherwise the service would have to be
 * restarted. Public because the pool creates it by class name.
 */
public final class ClosedDatabase implements SQLExceptionOverride {

  /** H2's DATABASE_IS_CLOSED. */
  private static final String CLOSED = "90098";

  /** Called by the pool. */
  public ClosedDatabase() {}

  @java.lang.Override // The interface has its own Override.
  public Override adjudicate(SQLException e) {
    return CLOSED.equals(e.getSQLState()) ? Override.MUST_EVICT : Override.CONTINUE_EVICT;
  }
}
