package org.standproud.api;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/** A batch over a socket, so that a test decides when a line is sent and when one is read. */
final class StreamedBatch implements AutoCloseable {

  private final Socket socket;
  private final OutputStream out;
  private final BufferedReader in;

  /** Begins a batch; its answer can be read as soon as the service says something. */
  StreamedBatch(int port) throws IOException {
    socket = new Socket("127.0.0.1", port);
    out = socket.getOutputStream();
    in =
        new BufferedReader(
            new InputStreamReader(new Unchunked(socket.getInputStream()), StandardCharsets.UTF_8));
    out.write(
        ("POST /v1/assessments/batch HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n"
                + "Content-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n\r\n")
            .getBytes(StandardCharsets.US_ASCII));
  }

  /** Sends a line. */
  void send(String line) throws IOException {
    byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
    out.write((Integer.toHexString(bytes.length) + "\r\n").getBytes(StandardCharsets.US_ASCII));
    out.write(bytes);
    out.write("\r\n".getBytes(StandardCharsets.US_ASCII));
    out.flush();
  }

  /** Sends lines from a thread of its own, then ends. */
  Thread sendAll(Iterator<String> lines) {
    Thread sender =
        new Thread(
            () -> {
              try {
                while (lines.hasNext()) {
                  send(lines.next());
                }
                end();
              } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
              }
            });
    sender.start();
    return sender;
  }

  /** Says that there are no more lines. */
  void end() throws IOException {
    out.write("0\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
    out.flush();
  }

  /** The next line of the answer, null after the last. */
  @Nullable String read() throws IOException {
    return in.readLine();
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }

  /** The body of a chunked response. */
  private static final class Unchunked extends InputStream {

    private final InputStream in;
    private boolean headed;
    private int left;
    private boolean ended;

    private Unchunked(InputStream in) {
      this.in = in;
    }

    @Override
    public int read() throws IOException {
      return fill() ? one() : -1;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      if (!fill()) {
        return -1;
      }
      int read = in.read(into, from, Math.min(most, left));
      taken(read);
      return read;
    }

    private int one() throws IOException {
      int b = in.read();
      taken(1);
      return b;
    }

    private void taken(int count) throws IOException {
      left -= count;
      if (left == 0) {
        line();
      }
    }

    private boolean fill() throws IOException {
      if (!headed) {
        String status = line();
        if (!status.startsWith("HTTP/1.1 200")) {
          throw new IOException(status);
        }
        while (!line().isEmpty()) {
          continue;
        }
        headed = true;
      }
      if (left == 0 && !ended) {
        left = Integer.parseInt(line(), 16);
        ended = left == 0;
      }
      return !ended;
    }

    private String line() throws IOException {
      StringBuilder line = new StringBuilder();
      for (int b = in.read(); b != '\n'; b = in.read()) {
        if (b < 0) {
          throw new IOException("the service ended in the middle of " + line);
        }
        line.append((char) b);
      }
      return line.toString().strip();
    }
  }
}
