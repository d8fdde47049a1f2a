package org.standproud.web.browser;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Gives tests their browser, or says why there is none. See {@link InChromium}. */
final class ChromiumExtension
    implements ExecutionCondition, ParameterResolver, BeforeEachCallback, AfterEachCallback {

  private static final Namespace HERE = Namespace.create(ChromiumExtension.class);
  private static final String WANTED = "BROWSER_TESTS";

  private static Optional<Chromium> chromium() {
    return Chromium.on(System.getenv().getOrDefault("PATH", ""));
  }

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    String wanted = System.getenv().getOrDefault(WANTED, "");
    return switch (Chromium.decide(chromium().isPresent(), wanted)) {
      case RUN -> ConditionEvaluationResult.enabled("Chromium is here");
      case FAIL ->
          throw new IllegalStateException(
              "no chromium and chromedriver on PATH, and " + WANTED + "=" + Chromium.REQUIRED);
      case SKIP -> {
        skipped(context).count(context);
        yield ConditionEvaluationResult.disabled("no chromium and chromedriver on PATH");
      }
    };
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    Class<?> type = parameter.getParameter().getType();
    return type == Browser.class || type == Shop.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    Sitting sitting = sitting();
    return parameter.getParameter().getType() == Shop.class ? sitting.shop : sitting.browser;
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    sitting().browser.startAnew();
  }

  @Override
  public void afterEach(ExtensionContext context) {
    Browser browser = sitting().browser;
    if (context.getExecutionException().isPresent()) {
      browser.keepFailed(context.getRequiredTestMethod().getName());
    } else {
      browser.refuseComplaints();
    }
  }

  private static Sitting sitting() {
    return Shared.SITTING;
  }

  private static Skipped skipped(ExtensionContext context) {
    return context
        .getRoot()
        .getStore(HERE)
        .computeIfAbsent(Skipped.class, k -> new Skipped(), Skipped.class);
  }

  /** Opened by the first test of this process, for a build runs each class by itself. */
  private static final class Shared {
    private static final Sitting SITTING = new Sitting(chromium().orElseThrow());

    static {
      Runtime.getRuntime().addShutdownHook(new Thread(SITTING::close, "browser-close"));
    }
  }

  /** One service and one browser for all tests of a process. */
  private static final class Sitting {
    private final Shop shop = Shop.open(Map.of());
    private final Browser browser;

    Sitting(Chromium chromium) {
      browser = new Browser(chromium, shop.address());
    }

    void close() {
      browser.close();
      shop.close();
    }
  }

  /** Says what was skipped: at once in large letters, and again as the last line. */
  private static final class Skipped implements AutoCloseable {
    private static final String LINE = "*".repeat(78);
    private final AtomicInteger classes = new AtomicInteger();

    void count(ExtensionContext context) {
      if (classes.getAndIncrement() == 0) {
        System.err.println(
            String.join(
                System.lineSeparator(),
                "",
                LINE,
                "*  THE PAGES ARE NOT TESTED IN A BROWSER: there is no chromium and no"
                    + " chromedriver.",
                "*  On Debian: apt-get install chromium chromium-driver",
                "*  To fail instead of skipping: " + WANTED + "=" + Chromium.REQUIRED,
                LINE));
      }
      System.err.println("*  skipped: " + context.getDisplayName());
    }

    @Override
    public void close() {
      System.err.println(
          LINE
              + System.lineSeparator()
              + "*  "
              + classes
              + " classes of browser tests were SKIPPED for want of Chromium."
              + System.lineSeparator()
              + LINE);
    }
  }
}
