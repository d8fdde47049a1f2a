package org.standproud.assessment;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.records.EvidenceDigest;
import org.standproud.mechanics.evidence.Assumption;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.Band;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.cbor.CBORMapper;

/**
 * Evidence as judging it again needs it: every fact with its value, and what could have been
 * measured in place of an assumption. What it was computed from is left out.
 *
 * <p>CBOR (RFC 8949): an array of the version, of an array of all measures, and of an array a fact:
 * its name, a letter for the kind of value, the value, and the places of its measures. Written from
 * the record alone, so facts of an earlier vocabulary are kept.
 */
@Component
public final class EvidenceDigestCodec implements EvidenceDigest {

  private static final int VERSION = 1;

  private static final String EXACT = "e";
  private static final String BAND = "b";
  private static final String BANDS = "l";
  private static final String WORD = "w";
  private static final String YES = "y";
  private static final String NO = "n";
  private static final String MISSING = "m";

  private static final CBORMapper CBOR = new CBORMapper();

  @Override
  public byte @Nullable [] of(AuditRecord record) {
    return record.account().evidence().equals(Mask.NO_ACCOUNT.evidence())
        ? null
        : of(EvidenceDocument.kept(record.account().evidence()));
  }

  /**
   * The numbers of an account that is at hand: the same that {@link #of(AuditRecord)} gives for the
   * record it is kept in, without reading them back out of its text.
   */
  static byte[] of(EvidenceDocument account) {
    return write(account.facts());
  }

  @Override
  public boolean reads(byte[] kept) {
    try {
      return version(kept) == VERSION;
    } catch (JacksonException e) {
      return false;
    }
  }

  /** Numbers of another version were right when they were kept; this program cannot tell. */
  @Override
  public boolean agree(byte[] kept, AuditRecord record) {
    return !reads(kept) || EvidenceDigest.super.agree(kept, record);
  }

  private static byte[] write(List<EvidenceDocument.FactLine> facts) {
    List<String> measures =
        facts.stream().flatMap(line -> measures(line).stream()).distinct().toList();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator out = CBOR.createGenerator(bytes)) {
      out.writeStartArray();
      out.writeNumber(VERSION);
      out.writeStartArray();
      measures.forEach(out::writeString);
      out.writeEndArray();
      for (EvidenceDocument.FactLine line : facts) {
        out.writeStartArray();
        out.writeString(line.value().fact());
        write(line.value(), out);
        measures(line).forEach(measure -> out.writeNumber(measures.indexOf(measure)));
        out.writeEndArray();
      }
      out.writeEndArray();
    }
    return bytes.toByteArray();
  }

  private static List<String> measures(EvidenceDocument.FactLine line) {
    if (line.assumptions().isEmpty()) {
      return List.of();
    }
    return line.assumptions().stream()
        .map(Assumption::measure)
        .filter(Objects::nonNull)
        .distinct()
        .toList();
  }

  private static void write(FactValue fact, JsonGenerator out) {
    Value value = fact.value();
    if (value instanceof Value.Quantity one) {
      write(one.band(), out);
    } else if (value instanceof Value.Quantities list) {
      out.writeString(BANDS);
      list.bands().forEach(band -> write(band, out));
    } else if (value instanceof Value.Text text) {
      out.writeString(WORD);
      out.writeString(text.word());
    } else if (value instanceof Value.Truth truth) {
      out.writeString(truth.yes() ? YES : NO);
    } else {
      out.writeString(MISSING);
      out.writeString(((Value.Missing) value).measure());
    }
  }

  /** RFC 8785 writes zero without a sign, so the record does not know of one. */
  private static double plain(double number) {
    return number == 0 ? 0 : number;
  }

  private static void write(Band band, JsonGenerator out) {
    boolean exact = band.low() == band.high();
    out.writeString(exact ? EXACT : BAND);
    out.writeNumber(plain(band.low()));
    if (!exact) {
      out.writeNumber(plain(band.likely()));
      out.writeNumber(plain(band.high()));
    }
  }

  /**
   * The evidence in numbers that were kept; facts that this program no longer has a name for are
   * left out.
   *
   * @param kept what {@link #of} gave
   * @throws IllegalArgumentException if it is of another version, or no such numbers at all
   */
  public static Evidence read(byte[] kept) {
    try (JsonParser in = CBOR.createParser(kept)) {
      in.nextToken();
      if (in.nextIntValue(0) != VERSION) {
        throw new IllegalArgumentException("numbers in short of another version");
      }
      List<Assumption> measures = readMeasures(in);
      List<EvidenceValue> values = new ArrayList<>();
      while (in.nextToken() == JsonToken.START_ARRAY) {
        readFact(in, measures, values);
      }
      return new Evidence(values);
    } catch (JacksonException | IndexOutOfBoundsException e) {
      throw new IllegalArgumentException("no numbers in short", e);
    }
  }

  private static int version(byte[] kept) {
    try (JsonParser in = CBOR.createParser(kept)) {
      in.nextToken();
      return in.nextIntValue(0);
    }
  }

  private static List<Assumption> readMeasures(JsonParser in) {
    in.nextToken();
    List<Assumption> measures = new ArrayList<>();
    while (in.nextToken() == JsonToken.VALUE_STRING) {
      measures.add(new Assumption("", "", "", in.getString()));
    }
    return measures;
  }

  private static void readFact(
      JsonParser in, List<Assumption> measures, List<EvidenceValue> values) {
    in.nextToken();
    Fact fact = EvidenceDocument.FACTS.get(in.getString());
    in.nextToken();
    Value value = readValue(in.getString(), in);
    List<Assumption> assumed = new ArrayList<>();
    for (; in.currentToken() == JsonToken.VALUE_NUMBER_INT; in.nextToken()) {
      assumed.add(measures.get(in.getIntValue()));
    }
    if (fact != null) {
      values.add(new EvidenceValue(fact, value, List.of(), assumed));
    }
  }

  /** Reads a value and goes on to the token behind it. */
  private static Value readValue(String kind, JsonParser in) {
    in.nextToken();
    switch (kind) {
      case EXACT, BAND:
        return new Value.Quantity(readBand(kind, in));
      case YES, NO:
        return new Value.Truth(kind.equals(YES));
      case BANDS:
        List<Band> bands = new ArrayList<>();
        while (in.currentToken() == JsonToken.VALUE_STRING) {
          String each = in.getString();
          in.nextToken();
          bands.add(readBand(each, in));
        }
        return new Value.Quantities(bands);
      default:
        String text = in.getString();
        in.nextToken();
        return kind.equals(WORD) ? new Value.Text(text) : new Value.Missing(text);
    }
  }

  private static Band readBand(String kind, JsonParser in) {
    double low = readNumber(in);
    return kind.equals(EXACT) ? Band.exactly(low) : new Band(low, readNumber(in), readNumber(in));
  }

  private static double readNumber(JsonParser in) {
    double number = in.getDoubleValue();
    in.nextToken();
    return number;
  }
}
