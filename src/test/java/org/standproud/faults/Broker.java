package org.standproud.faults;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.NewTopic;
import org.apache.kafka.common.Uuid;

/** A broker in a process of its own, which can be killed and started again on what it had. */
final class Broker implements AutoCloseable {

  private static final String CLUSTER = Uuid.randomUuid().toString();

  private final Path folder;
  private final int port;
  private Process process;

  /**
   * Starts one.
   *
   * @param folder where its logs lie
   * @param port where it listens; its controller listens at the next
   */
  Broker(Path folder, int port) throws IOException, InterruptedException {
    this.folder = Files.createDirectories(folder);
    this.port = port;
    Files.writeString(folder.resolve("broker.properties"), settings());
    Files.writeString(
        folder.resolve("logback.xml"), "<configuration><root level=\"OFF\"/></configuration>");
    int formatted =
        run("kafka.tools.StorageTool", "format", "-t", CLUSTER, "-c", file("broker.properties"))
            .waitFor();
    if (formatted != 0) {
      throw new IllegalStateException(Files.readString(folder.resolve("said")));
    }
    start();
  }

  /** Addresses of the broker. */
  String address() {
    return "127.0.0.1:" + port;
  }

  /** Starts it and waits until it listens. */
  void start() throws IOException, InterruptedException {
    process = run("kafka.Kafka", file("broker.properties"));
    while (!listens()) {
      if (!process.isAlive()) {
        throw new IllegalStateException(Files.readString(folder.resolve("said")));
      }
      Thread.sleep(100);
    }
  }

  /** Ends it as kill -9 does. */
  void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }

  /** Makes topics. */
  void topics(int partitions, String... names) throws InterruptedException, ExecutionException {
    List<NewTopic> topics = new ArrayList<>();
    for (String name : names) {
      topics.add(new NewTopic(name, partitions, (short) 1));
    }
    try (Admin admin = Admin.create(Map.of("bootstrap.servers", address()))) {
      admin.createTopics(topics).all().get();
    }
  }

  private boolean listens() {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress("127.0.0.1", port), 200);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private Process run(String main, String... arguments) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:TieredStopAtLevel=1",
                "-Dlogback.configurationFile=" + file("logback.xml"),
                "-cp",
                System.getProperty("java.class.path"),
                main));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("said").toFile())
        .start();
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  /** One broker alone keeps the state of groups and transactions. */
  private String settings() {
    return """
        process.roles=broker,controller
        node.id=1
        controller.quorum.voters=1@127.0.0.1:%2$d
        controller.listener.names=CONTROLLER
        listeners=PLAINTEXT://127.0.0.1:%1$d,CONTROLLER://127.0.0.1:%2$d
        advertised.listeners=PLAINTEXT://127.0.0.1:%1$d
        listener.security.protocol.map=PLAINTEXT:PLAINTEXT,CONTROLLER:PLAINTEXT
        log.dirs=%3$s
        offsets.topic.replication.factor=1
        offsets.topic.num.partitions=4
        transaction.state.log.replication.factor=1
        transaction.state.log.min.isr=1
        transaction.state.log.num.partitions=4
        transaction.abort.timed.out.transaction.cleanup.interval.ms=1000
        group.initial.rebalance.delay.ms=0
        """
        .formatted(port, port + 1, file("log"));
  }

  @Override
  public void close() throws InterruptedException {
    kill();
  }
}
