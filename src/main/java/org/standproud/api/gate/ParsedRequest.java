package org.standproud.api.gate;

import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A request whose parameters, and form body if any, are already read. */
final class ParsedRequest extends HttpServletRequestWrapper {

  private final Map<String, String[]> parameters;
  private final byte @Nullable [] form;

  /**
   * Creates a request with its parameters.
   *
   * @param request the request
   * @param parameters the values of each parameter by name
   * @param form the body, or null if it was not read
   */
  ParsedRequest(
      HttpServletRequest request, Map<String, String[]> parameters, byte @Nullable [] form) {
    super(request);
    this.parameters = Collections.unmodifiableMap(parameters);
    this.form = form;
  }

  @Override
  public @Nullable String getParameter(String name) {
    String[] values = parameters.get(name);
    return values == null ? null : values[0];
  }

  @Override
  public String @Nullable [] getParameterValues(String name) {
    String[] values = parameters.get(name);
    return values == null ? null : values.clone();
  }

  @Override
  public Map<String, String[]> getParameterMap() {
    return parameters;
  }

  @Override
  public Enumeration<String> getParameterNames() {
    return Collections.enumeration(parameters.keySet());
  }

  @Override
  public ServletInputStream getInputStream() throws IOException {
    return form == null ? super.getInputStream() : new Body(form);
  }

  @Override
  public BufferedReader getReader() throws IOException {
    return form == null
        ? super.getReader()
        : new BufferedReader(
            new InputStreamReader(new ByteArrayInputStream(form), StandardCharsets.UTF_8));
  }

  private static final class Body extends ServletInputStream {

    private final ByteArrayInputStream in;

    Body(byte[] form) {
      in = new ByteArrayInputStream(form);
    }

    @Override
    public int read() {
      return in.read();
    }

    @Override
    public int read(byte[] to, int from, int length) {
      return in.read(to, from, length);
    }

    @Override
    public boolean isFinished() {
      return in.available() == 0;
    }

    @Override
    public boolean isReady() {
      return true;
    }

    @Override
    public void setReadListener(ReadListener listener) {
      throw new IllegalStateException("the body was already read");
    }
  }
}
