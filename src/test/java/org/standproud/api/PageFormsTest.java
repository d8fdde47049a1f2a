package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.DispatcherServlet;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.standproud.IntegrationTest;

/** Forms and queries that no page of this service would send. */
@IntegrationTest
class PageFormsTest {

  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private static HttpResponse<String> post(String path, String form) {
    RunningService service = RunningService.shared();
    HttpResponse<String> page = service.get("/");
    String cookie = page.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
    Matcher token = TOKEN.matcher(page.body());
    assertThat(token.find()).isTrue();
    return service
        .caller()
        .send(
            service
                .caller()
                .to(path)
                .header("Accept", "text/html")
                .header("Cookie", cookie)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("_csrf=" + token.group(1) + "&" + form)));
  }

  @ParameterizedTest
  @CsvSource({
    "/, a=b",
    "/, draft=1",
    "/, step=x",
    "/draft, a=b",
    "/draft, step=nonsense&/units=metric",
    "/draft, drag=x&/units=metric",
    "/draft, drag=/cut/axialDepth&from=x&by=NaN&/units=metric",
    "/, request=nonsense",
    "/, /units=furlong",
    "/rules/edit, a=b",
    "/rules/edit, act=try&record=x",
    "/rules/edit, file=..%2F..%2Fx&text=%00"
  })
  void noFormIsAFaultOfTheService(String path, String form) {
    HttpResponse<String> answer = post(path, form);
    assertThat(answer.statusCode()).as(answer.body()).isLessThan(500);
  }

  /** RFC 3986, section 2.1: a per cent sign is followed by two hexadecimal digits. */
  @Test
  void aBrokenEscapeIsABadRequestAtEveryAddress() {
    RunningService service = RunningService.shared();
    List<String> others = new ArrayList<>();
    for (String address : addresses(service)) {
      for (String query : List.of("?x=%ff", "?x=%C3%28", "?%0d%0a%80=1")) {
        int status = service.get(address + query).statusCode();
        if (status != 400) {
          others.add(status + " " + address + query);
        }
      }
    }
    assertThat(others).isEmpty();
  }

  private static Set<String> addresses(RunningService service) {
    assertThat(service.get("/").statusCode()).isEqualTo(200);
    Set<String> addresses = new TreeSet<>();
    for (HandlerMapping mapping : service.part(DispatcherServlet.class).getHandlerMappings()) {
      if (mapping instanceof RequestMappingHandlerMapping pages) {
        for (RequestMappingInfo page : pages.getHandlerMethods().keySet()) {
          Set<RequestMethod> methods = page.getMethodsCondition().getMethods();
          if (methods.isEmpty() || methods.contains(RequestMethod.GET)) {
            page.getPatternValues().forEach(p -> addresses.add(p.replaceAll("\\{[^}]*}", "x")));
          }
        }
      }
    }
    assertThat(addresses).contains("/", "/sign-in", "/records", "/v1/rules").hasSizeGreaterThan(40);
    return addresses;
  }

  /** It is read in metric units, and what it lacks is shown beside the fields. */
  @Test
  void aFormWithoutItsUnitsIsShownAgain() {
    HttpResponse<String> answer = post("/", "a=b");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("name=\"/units\"");
  }
}
