package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.IntegrationTest;

/** Forms that no page of this service would send. */
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

  @Test
  void aFormWithoutItsUnitsIsNotUnderstood() {
    HttpResponse<String> answer = post("/", "a=b");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("Not understood");
  }
}
