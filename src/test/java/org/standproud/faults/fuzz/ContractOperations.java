package org.standproud.faults.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Every path and method of the published contract. */
public final class ContractOperations {

  private static final Set<String> METHODS = Set.of("get", "post", "put", "delete", "patch");

  private final JsonNode contract;
  private final List<Operation> operations = new ArrayList<>();

  /**
   * A parameter.
   *
   * @param name its name
   * @param in path, query or header
   * @param schema what it may be
   */
  record Parameter(String name, String in, JsonNode schema) {}

  /**
   * A body.
   *
   * @param type its media type
   * @param schema what it may be
   * @param example one that is right, missing if there is none
   */
  record Body(String type, JsonNode schema, JsonNode example) {}

  /**
   * A path and a method.
   *
   * @param path with the names of its parameters in braces
   * @param method in capitals
   * @param parameters of the path, the query and the header
   * @param bodies it takes, none if it takes none
   */
  record Operation(String path, String method, List<Parameter> parameters, List<Body> bodies) {}

  private ContractOperations(JsonNode contract) {
    this.contract = contract;
    contract
        .get("paths")
        .properties()
        .forEach(
            path ->
                path.getValue().properties().stream()
                    .filter(method -> METHODS.contains(method.getKey()))
                    .forEach(method -> add(path.getKey(), method.getKey(), method.getValue())));
  }

  /** Reads the contract. */
  public static ContractOperations read(Path file) throws IOException {
    return new ContractOperations(YAMLMapper.builder().build().readTree(Files.readString(file)));
  }

  List<Operation> all() {
    return operations;
  }

  /** What a schema stands for, where it only refers to another. */
  JsonNode resolved(JsonNode schema) {
    String ref = schema.path("$ref").stringValue("");
    return ref.isEmpty() ? schema : contract.at(ref.substring(1));
  }

  private void add(String path, String method, JsonNode description) {
    List<Parameter> parameters = new ArrayList<>();
    for (JsonNode p : description.path("parameters")) {
      parameters.add(
          new Parameter(p.get("name").stringValue(), p.get("in").stringValue(), p.path("schema")));
    }
    List<Body> bodies = new ArrayList<>();
    description
        .at("/requestBody/content")
        .properties()
        .forEach(
            body ->
                bodies.add(
                    new Body(
                        body.getKey(),
                        body.getValue().path("schema"),
                        body.getValue().path("example"))));
    operations.add(new Operation(path, method.toUpperCase(Locale.ROOT), parameters, bodies));
  }
}
