package org.standproud.audit.records;

import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.standproud.audit.canonical.CanonicalJson;

/** Texts of records as an intruder with the database's password would see and change them. */
public final class StoredTexts {

  private StoredTexts() {}

  /** The text of a record. */
  public static String at(JdbcClient database, long sequence) {
    return PackedText.text(
        database
            .sql("select packed from audit_record where sequence = ?")
            .param(sequence)
            .query(byte[].class)
            .single());
  }

  /** Every text that is there. */
  public static List<String> all(JdbcClient database) {
    return database
        .sql("select packed from audit_record where packed is not null")
        .query((rs, n) -> PackedText.text(rs.getBytes(1)))
        .list();
  }

  /** Puts another text in the place of that of a record, well packed. */
  public static void change(JdbcClient database, long sequence, UnaryOperator<String> change) {
    String before = at(database, sequence);
    String after = change.apply(before);
    if (after.equals(before)) {
      throw new IllegalStateException("nothing to change in " + before);
    }
    spoil(database, sequence, PackedText.of(new CanonicalJson(after)));
  }

  /** Cuts what a record holds after so many bytes, so that it cannot be unpacked. */
  public static void cut(JdbcClient database, long sequence, int bytes) {
    byte[] whole =
        database
            .sql("select packed from audit_record where sequence = ?")
            .param(sequence)
            .query(byte[].class)
            .single();
    spoil(database, sequence, Arrays.copyOf(whole, bytes));
  }

  private static void spoil(JdbcClient database, long sequence, byte[] packed) {
    database
        .sql("update audit_record set packed = ? where sequence = ?")
        .params(packed, sequence)
        .update();
  }
}
