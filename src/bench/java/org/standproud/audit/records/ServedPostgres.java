package org.standproud.audit.records;

import java.io.IOException;

/** A PostgreSQL for the load script: says the address of an empty database, ends with its input. */
public final class ServedPostgres {

  private ServedPostgres() {}

  /**
   * Serves it.
   *
   * @param args none
   * @throws IOException if it cannot be started
   */
  public static void main(String[] args) throws IOException {
    try (PostgresServer server = new PostgresServer()) {
      System.out.println(server.emptyDatabaseUrl());
      while (System.in.read() >= 0) {
        // Until the input ends.
      }
    }
  }
}
