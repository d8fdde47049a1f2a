package org.standproud.assessment.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.MalformedRequestException;
import org.standproud.assessment.SetupRequest;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.BodyTooLargeException;
import tools.jackson.databind.JsonNode;

/** One set-up a line; or an object with a key and a set-up. */
public final class NdjsonEntries implements OrderedParallelism.Source<Entry> {

  private static final String KEY = "idempotencyKey";
  private static final String SETUP = "setup";

  private final Lines lines;
  private final int limitBytes;

  public NdjsonEntries(InputStream in, int limitBytes) {
    this.lines = new Lines(in, limitBytes);
    this.limitBytes = limitBytes;
  }

  @Override
  public @Nullable Entry next() throws IOException {
    Lines.Line line = lines.next();
    return line == null ? null : new Entry(line.number(), () -> read(line));
  }

  private Entry.Parsed read(Lines.Line line) {
    if (line.cut()) {
      throw new BodyTooLargeException(limitBytes);
    }
    JsonNode tree = SetupRequest.of(text(line.bytes())).tree();
    if (!tree.has(SETUP)) {
      return new Entry.Parsed(new SetupRequest(tree), null, Map.of());
    }
    Set<String> unknown = new TreeSet<>(tree.propertyNames());
    unknown.removeAll(Set.of(KEY, SETUP));
    if (!unknown.isEmpty() || (tree.has(KEY) && !tree.get(KEY).isString())) {
      throw new BadParameterException(
          "line", "beside " + SETUP + " only " + KEY + ", a text, may stand");
    }
    String key = tree.has(KEY) ? tree.get(KEY).stringValue() : null;
    return new Entry.Parsed(new SetupRequest(tree.get(SETUP)), key, Map.of());
  }

  private static String text(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new MalformedRequestException("the line is not UTF-8 text");
    }
  }
}
