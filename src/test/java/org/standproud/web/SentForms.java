package org.standproud.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.core.Ordered;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Writes the parameters of a mock request as a browser sends them: into the query of a GET, into
 * the body of a POST. The service decodes both itself.
 */
@TestConfiguration(proxyBeanMethods = false)
public class SentForms {

  @Bean
  FilterRegistrationBean<OncePerRequestFilter> sentForm() {
    FilterRegistrationBean<OncePerRequestFilter> filter =
        new FilterRegistrationBean<>(
            new OncePerRequestFilter() {
              @Override
              protected void doFilterInternal(
                  HttpServletRequest request, HttpServletResponse response, FilterChain chain)
                  throws ServletException, IOException {
                if (request instanceof MockHttpServletRequest mock
                    && !mock.getParameterMap().isEmpty()) {
                  send(mock);
                }
                chain.doFilter(request, response);
              }
            });
    filter.setOrder(Ordered.HIGHEST_PRECEDENCE);
    return filter;
  }

  private static void send(MockHttpServletRequest request) {
    if (request.getMethod().equals("GET")) {
      request.setQueryString(encoded(request));
    } else if (request.getContentLength() <= 0) {
      request.setContentType(MediaType.APPLICATION_FORM_URLENCODED_VALUE);
      request.setContent(encoded(request).getBytes(StandardCharsets.US_ASCII));
    }
  }

  private static String encoded(MockHttpServletRequest request) {
    return request.getParameterMap().entrySet().stream()
        .flatMap(
            parameter ->
                Arrays.stream(parameter.getValue())
                    .map(value -> word(parameter.getKey()) + "=" + word(value)))
        .collect(Collectors.joining("&"));
  }

  private static String word(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
