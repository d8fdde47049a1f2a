package org.standproud.api;

import java.net.HttpCookie;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** As much of a browser as forms and cookies need. */
final class Browser {

  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private final RunningService.Caller caller;
  private final Map<String, String> cookies = new LinkedHashMap<>();
  private String token = "";

  Browser(RunningService.Caller caller) {
    this.caller = caller;
  }

  HttpResponse<String> get(String path) {
    return kept(caller.send(request(path).GET()));
  }

  /** Sends a form of the page seen last. */
  HttpResponse<String> post(String path, String form) {
    return postWithoutToken(path, (form.isEmpty() ? "" : form + "&") + "_csrf=" + token);
  }

  HttpResponse<String> postWithoutToken(String path, String form) {
    return kept(
        caller.send(
            request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))));
  }

  private HttpRequest.Builder request(String path) {
    HttpRequest.Builder request =
        caller.to(path).header("Accept", "text/html,application/xhtml+xml,*/*;q=0.8");
    return cookies.isEmpty()
        ? request
        : request.header(
            "Cookie",
            cookies.entrySet().stream()
                .map(c -> c.getKey() + "=" + c.getValue())
                .collect(Collectors.joining("; ")));
  }

  private HttpResponse<String> kept(HttpResponse<String> response) {
    for (String header : response.headers().allValues("Set-Cookie")) {
      HttpCookie cookie = HttpCookie.parse(header.replaceAll("(?i)expires=[^;]*;?", "")).get(0);
      if (cookie.getMaxAge() == 0) {
        cookies.remove(cookie.getName());
      } else {
        cookies.put(cookie.getName(), cookie.getValue());
      }
    }
    Matcher field = TOKEN.matcher(response.body());
    if (field.find()) {
      token = field.group(1);
    }
    return response;
  }
}
