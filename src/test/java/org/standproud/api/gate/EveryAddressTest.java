package org.standproud.api.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.standproud.IntegrationTest;
import org.standproud.access.AccessTable;

/** Finds an address that is missing in the access table. */
@SpringBootTest
@IntegrationTest
class EveryAddressTest {

  private static @TempDir Path directory;

  /** Reached from within only. */
  private static final Set<String> INSIDE = Set.of("/error", "/refused");

  @Autowired
  @Qualifier("requestMappingHandlerMapping")
  private RequestMappingHandlerMapping addresses;

  @DynamicPropertySource
  static void records(DynamicPropertyRegistry properties) {
    properties.add("standproud.audit.directory", () -> directory.toString());
  }

  @Test
  void everyAddressHasARowOfItsOwnInTheTableOfAccess() {
    AccessTable.Row last = AccessTable.rows().get(AccessTable.rows().size() - 1);
    List<String> forgotten = new ArrayList<>();
    for (RequestMappingInfo address : addresses.getHandlerMethods().keySet()) {
      for (String path : address.getPatternValues()) {
        for (String method : methods(address)) {
          MockHttpServletRequest call =
              new MockHttpServletRequest(method, path.replaceAll("\\{[^}]*}", "x"));
          if (AccessTableAuthorization.row(call).equals(last) && !INSIDE.contains(path)) {
            forgotten.add(method + " " + path);
          }
        }
      }
    }
    assertThat(forgotten).isEmpty();
  }

  private static List<String> methods(RequestMappingInfo address) {
    Set<RequestMethod> methods = address.getMethodsCondition().getMethods();
    return methods.isEmpty() ? List.of("GET", "POST") : methods.stream().map(Enum::name).toList();
  }
}
