package org.standproud.api.gate;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The parameters of a query and of a form, decoded as application/x-www-form-urlencoded (WHATWG URL
 * standard, section 5.1) but strictly: every per cent sign must begin a complete escape, and the
 * result must be UTF-8.
 */
final class FormParameters {

  /** Most parameters in one request; the largest form has fewer than 200 fields. */
  static final int MOST = 1_000;

  private final Map<String, List<String>> values = new LinkedHashMap<>();
  private int count;

  private FormParameters() {}

  /**
   * Decodes parameters, those of the query first.
   *
   * @param query the text after the question mark, or null
   * @param form the body of a form, or null
   * @return the values of each parameter by name, in the order sent
   * @throws Malformed if an escape is broken, the text is not UTF-8 or there are too many
   */
  static Map<String, String[]> of(@Nullable String query, @Nullable String form) throws Malformed {
    FormParameters parameters = new FormParameters();
    parameters.add(query);
    parameters.add(form);
    Map<String, String[]> all = new LinkedHashMap<>();
    parameters.values.forEach((name, values) -> all.put(name, values.toArray(String[]::new)));
    return all;
  }

  private void add(@Nullable String text) throws Malformed {
    if (text == null) {
      return;
    }
    for (String pair : text.split("&", -1)) {
      if (pair.isEmpty()) {
        continue;
      }
      count++;
      if (count > MOST) {
        throw new Malformed("There are more than " + MOST + " parameters.");
      }
      int equals = pair.indexOf('=');
      String name = decoded(equals < 0 ? pair : pair.substring(0, equals));
      if (name.isEmpty() || name.chars().anyMatch(Character::isISOControl)) {
        throw new Malformed("A parameter has no name.");
      }
      String value = equals < 0 ? "" : decoded(pair.substring(equals + 1));
      values.computeIfAbsent(name, n -> new ArrayList<>()).add(value);
    }
  }

  private static String decoded(String text) throws Malformed {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '%') {
        int high = i + 2 < text.length() ? Character.digit(text.charAt(i + 1), 16) : -1;
        int low = i + 2 < text.length() ? Character.digit(text.charAt(i + 2), 16) : -1;
        if (high < 0 || low < 0) {
          throw new Malformed("A per cent sign is not followed by two hexadecimal digits.");
        }
        bytes.write(high << 4 | low);
        i += 2;
      } else if (c > 0xff) {
        throw new Malformed("A character is not escaped.");
      } else {
        bytes.write(c == '+' ? ' ' : c);
      }
    }
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(bytes.toByteArray()))
          .toString();
    } catch (CharacterCodingException e) {
      throw new Malformed("A parameter is not UTF-8 text.");
    }
  }

  /** Unreadable parameters, with the reason in one sentence. */
  static final class Malformed extends Exception {

    private static final long serialVersionUID = 1L;

    Malformed(String reason) {
      super(reason);
    }
  }
}
