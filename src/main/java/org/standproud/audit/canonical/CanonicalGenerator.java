package org.standproud.audit.canonical;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import org.erdtman.jcs.NumberToJSON;
import tools.jackson.core.Base64Variant;
import tools.jackson.core.JsonEncoding;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.SerializableString;
import tools.jackson.core.io.NumberOutput;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.core.util.JsonGeneratorDelegate;

/**
 * Writes canonical JSON (RFC 8785) in one pass, with numbers as in ECMAScript. The caller writes
 * members in order; a member out of order is refused. Records are hashed and stored in this form,
 * so its cost is a large part of the cost of an answer.
 *
 * <p>Every method that takes a value throws {@link NotCanonical} if the form cannot hold it.
 */
final class CanonicalGenerator extends JsonGeneratorDelegate {

  /**
   * RFC 8785 section 3.2.2.2 writes control characters with lower-case hexadecimal digits, and
   * every other character as it is.
   */
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .disable(JsonWriteFeature.WRITE_HEX_UPPER_CASE)
          .enable(JsonWriteFeature.COMBINE_UNICODE_SURROGATES_IN_UTF8)
          .build();

  /** Up to here every integer is written by its digits and fits a long. */
  private static final double DIGITS_ONLY = 1e15;

  /** The member written last in each open object, the innermost at {@link #depth}. */
  private String[] names = new String[16];

  private int depth = -1;

  CanonicalGenerator(OutputStream utf8) {
    super(FACTORY.createGenerator(ObjectWriteContext.empty(), utf8, JsonEncoding.UTF8), false);
  }

  @Override
  public JsonGenerator writeStartObject() {
    open();
    return super.writeStartObject();
  }

  @Override
  public JsonGenerator writeStartObject(Object value) {
    open();
    return super.writeStartObject(value);
  }

  @Override
  public JsonGenerator writeStartObject(Object value, int size) {
    open();
    return super.writeStartObject(value, size);
  }

  @Override
  public JsonGenerator writeEndObject() {
    depth--;
    return super.writeEndObject();
  }

  @Override
  public JsonGenerator writeName(String name) {
    next(name);
    return super.writeName(name);
  }

  @Override
  public JsonGenerator writeName(SerializableString name) {
    next(name.getValue());
    return super.writeName(name);
  }

  private void open() {
    depth++;
    names = depth < names.length ? names : Arrays.copyOf(names, 2 * depth);
    names[depth] = "";
  }

  /** String compares by UTF-16 code unit, which is the order of RFC 8785 section 3.2.3. */
  private void next(String name) {
    String before = names[depth];
    if (before.compareTo(name) > 0) {
      throw new NotCanonical("member " + name + " comes after " + before);
    }
    names[depth] = name;
  }

  @Override
  public JsonGenerator writeNumber(long number) {
    return (int) number == number
        ? super.writeNumber((int) number)
        : writeNumber(BigInteger.valueOf(number));
  }

  @Override
  public JsonGenerator writeNumber(BigInteger number) {
    String written = written(number.doubleValue());
    if (new BigDecimal(written).compareTo(new BigDecimal(number)) != 0) {
      throw new NotCanonical("integer " + number + " is beyond the range of a double");
    }
    return super.writeNumber(written);
  }

  /**
   * Between a thousandth and ten million, ECMAScript (ECMA-262, Number::toString) and Java write a
   * fraction with the same shortest digits and no exponent; most numbers are in that range, and
   * Jackson finds the digits fastest.
   */
  @Override
  public JsonGenerator writeNumber(double number) {
    double size = Math.abs(number);
    if (size < DIGITS_ONLY && number == Math.rint(number)) {
      return super.writeNumber((long) number);
    }
    boolean alike = size >= 1e-3 && size < 1e7;
    return super.writeNumber(alike ? NumberOutput.toString(number, true) : written(number));
  }

  /** A float or a decimal stands for its decimal digits. */
  @Override
  public JsonGenerator writeNumber(float number) {
    return writeNumber(Double.parseDouble(Float.toString(number)));
  }

  @Override
  public JsonGenerator writeNumber(BigDecimal number) {
    return writeNumber(number.doubleValue());
  }

  @Override
  public JsonGenerator writeNumber(String number) {
    return writeNumber(new BigDecimal(number));
  }

  @Override
  public JsonGenerator writeNumber(char[] number, int offset, int length) {
    return writeNumber(new String(number, offset, length));
  }

  @Override
  public JsonGenerator writeArray(double[] numbers, int offset, int length) {
    writeStartArray();
    for (int i = offset; i < offset + length; i++) {
      writeNumber(numbers[i]);
    }
    return writeEndArray();
  }

  @Override
  public JsonGenerator writeArray(long[] numbers, int offset, int length) {
    writeStartArray();
    for (int i = offset; i < offset + length; i++) {
      writeNumber(numbers[i]);
    }
    return writeEndArray();
  }

  @Override
  public JsonGenerator writeBinary(Base64Variant form, byte[] bytes, int offset, int length) {
    throw noValue();
  }

  @Override
  public JsonGenerator writeEmbeddedObject(Object value) {
    throw noValue();
  }

  static NotCanonical noValue() {
    return new NotCanonical("a node is not a JSON value");
  }

  private static String written(double number) {
    try {
      return NumberToJSON.serializeNumber(number);
    } catch (IOException e) {
      throw new NotCanonical("a number is not finite");
    }
  }
}
