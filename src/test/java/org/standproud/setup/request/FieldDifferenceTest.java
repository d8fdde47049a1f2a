package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What differs between two set-ups is found field by field, whichever field it is. */
class FieldDifferenceTest {

  private static final String CLAMPS =
      "[{\"side\":\"fixed jaw\",\"along\":10,\"length\":30,\"gap\":2,\"height\":5}]";

  private static final String BACKING =
      "[{\"kind\":\"block\",\"side\":\"fixed jaw\",\"along\":10,\"length\":30,\"height\":5,"
          + "\"stiffness\":50,\"holds\":900,\"preload\":100}]";

  private static final Setup SETUP = setup("01-top-edge-wire-and-stop", FieldDifferenceTest::fill);

  /** Fields that state in another way what a set-up keeps under one of the others. */
  private static final List<String> OTHER_WAYS =
      List.of(
          "/hold/handleLength",
          "/cut/side",
          "/cut/radialDepth",
          "/cut/mode",
          "/cut/cuttingSpeed",
          "/cut/tableFeed",
          "/cut/handFeed");

  private static void fill(ObjectNode request) {
    request.withObject("/hold").set("clamps", json(CLAMPS));
    request.withObject("/hold").set("backing", json(BACKING));
    ObjectNode pass = request.putArray("passes").addObject();
    pass.put("stage", request.at("/cut/stage").stringValue());
    pass.set("axialDepth", request.at("/cut/axialDepth"));
    pass.put("feedPerTooth", 0.1);
  }

  @TestFactory
  List<DynamicTest> aFieldThatAloneIsAnotherIsTheOneDifference() {
    List<DynamicTest> tests = new ArrayList<>();
    for (FieldGuide.Entry field : FieldGuide.entries(UnitSystem.METRIC)) {
      boolean leaf =
          field.sort() != FieldGuide.Sort.PART && field.sort() != FieldGuide.Sort.SHELVED_PART;
      if (leaf && !OTHER_WAYS.contains(field.path()) && !field.path().equals("/note")) {
        tests.add(DynamicTest.dynamicTest(field.path(), () -> isSeen(field.path())));
      }
    }
    assertThat(tests).hasSizeGreaterThan(110);
    return tests;
  }

  private static void isSeen(String path) {
    Values values = RequestFields.SHAPE.of(SETUP);
    change(RequestFields.SHAPE, path.substring(1).split("/"), 0, values);
    List<FieldDifference> found = FieldDifference.between(SETUP, RequestFields.setup(values));
    int list = path.indexOf("/*");
    String at = list < 0 ? path : path.substring(0, list);
    String item = at.endsWith("/name") ? at.substring(0, at.length() - "/name".length()) : at;
    assertThat(found).extracting(d -> d.at().text()).containsExactly(item);
    assertThat(found.get(0).label()).isNotBlank();
  }

  private static <O> void change(ObjectSchema<O> shape, String[] names, int at, Values values) {
    for (Field<O, ?> field : shape.fields()) {
      if (field.name().equals(names[at])) {
        changeField(field, names, at, values);
      }
    }
  }

  private static <O, T> void changeField(Field<O, T> field, String[] names, int at, Values values) {
    if (at == names.length - 1) {
      values.put(field, other(field, values.get(field)));
    } else if (field instanceof ObjectField<?, ?> part) {
      change(part.shape(), names, at + 1, values.need(part));
    } else if (field instanceof ListField<?, ?> parts) {
      change(parts.shape(), names, at + 2, values.need(parts).get(0));
    }
  }

  /** Another value of the type of a field. */
  @SuppressWarnings("unchecked")
  private static <T> T other(Field<?, T> field, T value) {
    Object other;
    if (field instanceof Quantity<?> quantity) {
      double greatest = quantity.range().greatest();
      other = Double.valueOf(greatest).equals(value) ? quantity.range().least() : greatest;
    } else if (field instanceof BandField<?> band) {
      other = new Band(band.range().least(), band.range().least(), band.range().greatest());
    } else if (field instanceof Choice<?, ?> choice) {
      other = choice.options().get(choice.options().get(0).equals(value) ? 1 : 0);
    } else if (field instanceof BooleanField) {
      other = value == null || !((Boolean) value);
    } else if (field instanceof Count) {
      other = (Integer) value + 1;
    } else if (field instanceof Text) {
      other = value + " B";
    } else if (field instanceof Counts) {
      other = List.of(1);
    } else if (field instanceof Quantities<?> quantities) {
      other = List.of(quantities.range().greatest());
    } else {
      other = List.of();
    }
    return (T) other;
  }

  @Test
  void whatIsStatedInAnotherWayIsSeenInTheFieldThatKeepsIt() {
    assertThat(broadSide("side", "fixed jaw", "movable jaw")).contains("/cut/offset");
    assertThat(broadSide("radialDepth", 1, 2)).containsExactly("/cut/offset");
    assertThat(broadSide("mode", "climb", "conventional")).containsExactly("/cut/feed");
    assertThat(broadSide("cuttingSpeed", 30, 40)).contains("/cut/spindleSpeed");
    assertThat(broadSide("tableFeed", 100, 150)).containsExactly("/cut/feedPerTooth");
    assertThat(broadSide("handFeed", "slow", "quick")).containsExactly("/cut/feedPerTooth");
    assertThat(held(200, 300)).containsExactly("/hold/handleTorque");
  }

  private static List<String> held(double oneMm, double otherMm) {
    return between(handle(oneMm), handle(otherMm));
  }

  private static Setup handle(double lengthMm) {
    return setup(
        "01-top-edge-wire-and-stop",
        request -> {
          ObjectNode hold = request.withObject("/hold");
          hold.remove(List.of("clampingForce", "handleTorque"));
          hold.put("clamping", "firm").put("handleLength", lengthMm);
        });
  }

  private static List<String> broadSide(String name, Object one, Object other) {
    return between(broad(name, one), broad(name, other));
  }

  /** A pass along a broad side, placed by side and radial depth. */
  private static Setup broad(String name, Object value) {
    return setup(
        "02-broad-side-climb-on-cnc",
        request -> {
          request.remove("passes");
          ObjectNode cut = request.withObject("/cut");
          cut.remove(List.of("offset", "leadIn", "feed", "mode"));
          cut.put("side", "fixed jaw").put("radialDepth", 1.5).put("mode", "climb");
          cut.put("feedDrive", "hand");
          if (name.equals("cuttingSpeed")) {
            cut.remove("spindleSpeed");
          } else if (name.equals("tableFeed") || name.equals("handFeed")) {
            cut.remove(List.of("feedPerTooth", "tableFeed"));
          }
          cut.set(name, new JsonMapper().valueToTree(value));
        });
  }

  private static List<String> between(Setup one, Setup other) {
    return FieldDifference.between(one, other).stream().map(d -> d.at().text()).toList();
  }

  @Test
  void anotherCutterIsOneDifferenceWithTheFieldsThatAreShownOfIt() {
    Setup other =
        setup("01-top-edge-wire-and-stop", r -> r.put("cutter", "end mill 12 carbide, fresh"));
    Setup one = setup("01-top-edge-wire-and-stop", r -> {});
    List<String> found = between(one, other);
    assertThat(found).contains("/cutter", "/cutter/diameter").doesNotContain("/cutter/helix");
  }

  @Test
  void theSameCutterWithAnotherHelixIsAnotherHelix() {
    Setup one = setup("01-top-edge-wire-and-stop", r -> {});
    Setup other =
        setup(
            "01-top-edge-wire-and-stop",
            r -> {
              ObjectNode cutter = r.objectNode();
              cutter.put("name", r.get("cutter").stringValue()).put("helix", 17);
              r.set("cutter", cutter);
            });
    assertThat(FieldDifference.between(one, other))
        .singleElement()
        .satisfies(d -> assertThat(d.at()).isEqualTo(FieldPointer.to(CutterFields.HELIX)))
        .satisfies(d -> assertThat(d.label()).isEqualTo("cutter helix"));
  }

  private static Setup setup(String name, Consumer<ObjectNode> edit) {
    try {
      Catalogue seeds =
          ((CatalogueReading.Loaded) CatalogueReader.read(Path.of("seeds"))).catalogue();
      ObjectNode request =
          (ObjectNode) json(Files.readString(Path.of("seeds/setups", name + ".json")));
      edit.accept(request);
      Reading reading = new SetupReader(seeds).read(request);
      assertThat(reading).as("%s", reading).isInstanceOf(Reading.Accepted.class);
      return ((Reading.Accepted) reading).setup();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode json(String text) {
    try {
      return RequestText.json(text);
    } catch (RequestText.Malformed e) {
      throw new IllegalArgumentException(e);
    }
  }
}
