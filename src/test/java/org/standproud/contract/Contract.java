package org.standproud.contract;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import io.swagger.v3.oas.models.servers.Server;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Adds to the contract what the code alone does not contain: the meaning of each field of an answer
 * and whether it is always there (from {@code contract/words.yaml}, made from the javadoc of the
 * records), the request, and the problems.
 */
@Configuration(proxyBeanMethods = false)
class Contract {

  /** Read from the sources, so that one run of the build can write words and contract. */
  static final Path FOLDER = Path.of("src/test/resources/contract");

  private static final Path JOB_EXAMPLE = Path.of("seeds/jobs/01-loom-side-from-blank.json");

  private static final String ASSESS = "assess";
  private static final String PLAN_JOB = "planJob";
  private static final String KEY = "key";
  private static final String JSON = "application/json";
  private static final Set<String> CONDITIONAL = Set.of("putItem", "removeItem");
  private static final String MAY_BE_ABSENT = "?";

  @Bean
  OpenAPI description() {
    return new OpenAPI()
        .info(
            new Info()
                .title("Standproud")
                .version("1")
                .description(
                    "Checks, before the spindle starts, whether a milling set-up will hold."
                        + " Advice only: the machine's manual, local codes and safety rules and a"
                        + " qualified person at the machine come first. Fields without a value"
                        + " are left out. New fields may be added to answers within a version of"
                        + " the path; ignore fields you do not know.")
                .license(
                    new License()
                        .name("Apache-2.0")
                        .url("https://www.apache.org/licenses/LICENSE-2.0")))
        .components(
            new Components()
                .addSecuritySchemes(
                    KEY,
                    new SecurityScheme()
                        .type(SecurityScheme.Type.HTTP)
                        .scheme("bearer")
                        .description(
                            "A key of this service, or a token it trusts; only with"
                                + " standproud.access=keys.")))
        .security(List.of(new SecurityRequirement(), new SecurityRequirement().addList(KEY)))
        .servers(List.of(new Server().url("/").description("this service")));
  }

  @Bean
  OpenApiCustomizer fields() throws IOException {
    Map<String, Map<String, String>> words = words();
    return api ->
        words.forEach((name, fields) -> describe(api.getComponents().getSchemas(), name, fields));
  }

  @Bean
  OpenApiCustomizer request() throws IOException {
    Object example = example(FOLDER.resolve("example.json"));
    Object job = example(JOB_EXAMPLE);
    return api -> {
      RequestSchema.schemas().forEach(api.getComponents()::addSchemas);
      MediaType body = new MediaType().schema(ref(RequestSchema.NAME)).example(example);
      operation(api, ASSESS)
          .requestBody(
              new RequestBody().required(true).content(new Content().addMediaType(JSON, body)));
      MediaType jobBody = new MediaType().schema(ref(RequestSchema.JOB)).example(job);
      operation(api, PLAN_JOB)
          .requestBody(
              new RequestBody().required(true).content(new Content().addMediaType(JSON, jobBody)));
      Schema<Object> item = new Schema<>();
      List.of("Machine", "Vise", "Cutter", "Material").forEach(n -> item.addOneOfItem(ref(n)));
      Schema<Object> shelf = RequestSchema.typed("array");
      shelf.setItems(item);
      answers(operation(api, "getShelf"), shelf);
      answers(operation(api, "getItem"), item);
      answers(operation(api, "putItem"), item);
      operation(api, "putItem")
          .requestBody(
              new RequestBody()
                  .required(true)
                  .content(new Content().addMediaType(JSON, new MediaType().schema(item))));
    };
  }

  private static Object example(Path file) throws IOException {
    return JsonMapper.shared().readValue(Files.readString(file), Map.class);
  }

  @Bean
  OpenApiCustomizer problems() {
    return api -> {
      ProblemSchema.schemas().forEach(api.getComponents()::addSchemas);
      api.getPaths().forEach((path, item) -> item.readOperations().forEach(op -> finish(path, op)));
    };
  }

  private static Map<String, Map<String, String>> words() throws IOException {
    return YAMLMapper.builder()
        .build()
        .readValue(Files.readString(FOLDER.resolve("words.yaml")), new TypeReference<>() {});
  }

  /**
   * An empty key describes the schema itself; a field name ending in a question mark is optional.
   */
  @SuppressWarnings("rawtypes") // as the library has it
  private static void describe(
      Map<String, Schema> schemas, String name, Map<String, String> fields) {
    Schema<?> schema = schemas.get(name);
    if (schema == null) {
      throw new IllegalStateException("there is no answer " + name + " to describe");
    }
    fields.forEach(
        (key, meaning) -> {
          boolean optional = key.endsWith(MAY_BE_ABSENT);
          String field = optional ? key.substring(0, key.length() - 1) : key;
          if (field.isEmpty()) {
            schema.setDescription(meaning);
            return;
          }
          Schema<?> property = property(schema, field);
          property.setDescription(meaning);
          if (!optional) {
            schema.addRequiredItem(field);
          }
        });
  }

  @SuppressWarnings("rawtypes")
  private static Schema<?> property(Schema<?> schema, String field) {
    Map<String, Schema> properties = schema.getProperties();
    Schema<?> property = properties == null ? null : properties.get(field);
    if (property == null) {
      throw new IllegalStateException("there is no field " + field + " to describe");
    }
    Set<String> types = property.getTypes();
    if (types != null) {
      types.remove("null");
    }
    return property;
  }

  private static Operation operation(OpenAPI api, String id) {
    return api.getPaths().values().stream()
        .flatMap(path -> path.readOperations().stream())
        .filter(operation -> id.equals(operation.getOperationId()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("there is no operation " + id));
  }

  private static void answers(Operation operation, Schema<?> schema) {
    Content content = new Content().addMediaType(JSON, new MediaType().schema(schema));
    operation.getResponses().values().forEach(answer -> answer.setContent(content));
  }

  private static void tidy(Schema<?> parameter) {
    Set<String> types = parameter.getTypes();
    if (types != null) {
      types.remove("null"); // a parameter that is not given is left out
    }
    if (parameter.getDefault() != null && parameter.getEnum() != null) {
      // springdoc writes the name of the constant; clients send its word.
      parameter.setDefault(parameter.getDefault().toString().toLowerCase(Locale.ROOT));
    }
  }

  private static void finish(String path, Operation operation) {
    List<Parameter> parameters = operation.getParameters();
    if (parameters != null) {
      parameters.forEach(parameter -> tidy(parameter.getSchema()));
    }
    addProblems(path, operation);
  }

  private static void addProblems(String path, Operation operation) {
    if (ASSESS.equals(operation.getOperationId())) {
      problem(operation, "400", "The request is not JSON; line and column say where.");
      problem(operation, "409", "The first request with this key is being answered; try again.");
      problem(operation, "413", "The body is too large.");
      problem(operation, "415", "The body is not application/json.");
      problem(
          operation,
          "422",
          "The set-up is invalid and errors lists every problem; or the key belongs to another"
              + " request.");
      problem(
          operation, "503", "Not ready, or too busy to store the answer; nothing was answered.");
    } else if (PLAN_JOB.equals(operation.getOperationId())) {
      problem(operation, "400", "The request is not JSON; line and column say where.");
      problem(operation, "413", "The body is too large.");
      problem(operation, "415", "The body is not application/json.");
      problem(
          operation,
          "422",
          "The job is invalid, or nothing on the shelf reaches a face; errors lists every problem.");
      problem(operation, "503", "Not ready, or too many long computations are running.");
    } else if ("reloadRules".equals(operation.getOperationId())) {
      problem(operation, "422", "The cards are refused; errors lists every problem.");
    } else if (CONDITIONAL.contains(String.valueOf(operation.getOperationId()))) {
      problem(operation, "412", "The item has changed since it was fetched.");
      problem(operation, "422", "The item is invalid; errors lists every problem.");
      problem(operation, "428", "If-Match or If-None-Match is missing.");
    } else if ("importCutters".equals(operation.getOperationId())) {
      problem(operation, "422", "Nothing is imported; rows lists the errors of each row.");
    } else if (path.contains("{")) {
      problem(operation, "404", "Not found.");
    }
    problem(operation, "default", "Any other problem.");
  }

  private static void problem(Operation operation, String status, String description) {
    operation
        .getResponses()
        .addApiResponse(
            status,
            new ApiResponse()
                .description(description)
                .content(
                    new Content()
                        .addMediaType(
                            "application/problem+json",
                            new MediaType().schema(ref(ProblemSchema.NAME)))));
  }

  private static Schema<Object> ref(String name) {
    Schema<Object> ref = new Schema<>();
    ref.set$ref("#/components/schemas/" + name);
    return ref;
  }
}
