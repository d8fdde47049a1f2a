package org.standproud.web.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A Chromium without a window, looking at the pages of one service. */
final class Browser implements AutoCloseable {

  private static final Path SCREENS = Path.of("target", "screens");
  private static final boolean PICTURES = Boolean.getBoolean("screens.keep");
  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final Duration GLANCE = Duration.ofMillis(50);

  /**
   * A page that is refused on purpose is no fault of the page, nor is a request given up because
   * the next is sent or the page is left, which htmx writes down as it does errors.
   */
  private static final Pattern ON_PURPOSE =
      Pattern.compile(
          "Failed to load resource: the server responded|\"htmx:(sendAbort|afterRequest)\"");

  private final ChromeDriver driver;
  private final String home;
  private String address;

  Browser(Chromium chromium, String home) {
    this.home = home;
    this.address = home;
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium.browser().toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-gpu-rasterization",
        "--disable-software-rasterizer",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-extensions",
        "--disable-dev-shm-usage",
        "--hide-scrollbars",
        "--force-color-profile=srgb",
        "--use-fake-ui-for-media-stream",
        "--use-fake-device-for-media-stream",
        "--use-file-for-fake-audio-capture=" + TapSound.FILE,
        "--lang=en");
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(chromium.driver().toFile())
            .usingAnyFreePort()
            .build();
    driver = new ChromeDriver(service, options);
  }

  ChromeDriver driver() {
    return driver;
  }

  /** Turns to the pages of another service. */
  void visit(String other) {
    address = other;
  }

  /** Reset: wide, light, signed out, nothing open, no complaints. */
  void startAnew() {
    address = home;
    driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
    driver.executeCdpCommand(
        "Storage.clearDataForOrigin", Map.of("origin", home, "storageTypes", "local_storage"));
    driver.get("about:blank");
    look(Look.WIDE);
    complaints();
  }

  /** Looks at pages so from now on. */
  void look(Look look) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width", look.width(),
            "height", look.height(),
            "deviceScaleFactor", look.dots(),
            "mobile", false));
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(
                Map.of("name", "prefers-color-scheme", "value", look.dark() ? "dark" : "light"))));
  }

  void open(String path) {
    driver.get(address + path);
  }

  /** The path of the page that is open, with its query. */
  String path() {
    return driver.getCurrentUrl().substring(address.length());
  }

  WebElement one(String css) {
    return driver.findElement(By.cssSelector(css));
  }

  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  String text(String css) {
    return one(css).getText();
  }

  /** What stands on the page, as it is read. */
  String words() {
    return text("body");
  }

  /** Types into a field in place of what stands there. */
  void type(String css, String text) {
    WebElement field = one(css);
    field.clear();
    field.sendKeys(text);
  }

  /** Types one text over another in a field, as in editing. */
  void retype(String css, String before, String after) {
    driver.executeScript(
        "const f = arguments[0]; f.value = f.value.replace(arguments[1], arguments[2]);"
            + " f.dispatchEvent(new Event('input', {bubbles: true}));",
        one(css),
        before,
        after);
  }

  /** Whether pages may run script; some shops switch it off. */
  void script(boolean on) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !on));
  }

  /** Sets a day; how one is typed hangs on the language of the browser. */
  void day(String css, String day) {
    driver.executeScript("arguments[0].value = arguments[1]", one(css), day);
  }

  /** Picks by the words that are read. */
  void pick(String css, String words) {
    new Select(one(css)).selectByVisibleText(words);
  }

  /** Presses the button of these words; the page stays. */
  void press(String words) {
    button(words).click();
  }

  /** Presses the button of these words and waits for the page it leads to. */
  void send(String words) {
    leaving(() -> button(words).click());
  }

  /** Follows the link of these words and waits for the page. */
  void follow(String words) {
    leaving(() -> driver.findElement(By.linkText(words)).click());
  }

  /** Does something and waits until another page has come of it. */
  void leaving(Runnable act) {
    driver.executeScript("document.documentElement.dataset.left = 'no'");
    act.run();
    until(
        b ->
            b.ask(
                "document.documentElement.dataset.left === undefined"
                    + " && document.readyState === 'complete'"));
  }

  /** The button of these words, brought to where nothing lies over it. */
  private WebElement button(String words) {
    WebElement button = driver.findElement(By.xpath("//button[normalize-space()='" + words + "']"));
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
    return button;
  }

  /** Goes back to the page before, as the button of the browser does. */
  void back() {
    driver.navigate().back();
    until(b -> b.ask("document.readyState === 'complete'"));
  }

  void reload() {
    driver.navigate().refresh();
    until(b -> b.ask("document.readyState === 'complete'"));
  }

  /** Waits until it is so; for what a page fetches by itself. */
  void until(Function<Browser, Boolean> so) {
    new WebDriverWait(driver, PATIENCE, GLANCE)
        // A page that goes while it is asked answers with several kinds of this.
        .ignoring(WebDriverException.class)
        .until(d -> so.apply(this));
  }

  /** One stroke of a key, wherever the focus is. */
  void key(Keys key) {
    new Actions(driver).sendKeys(key).perform();
  }

  /** Where the focus is. */
  WebElement focus() {
    return driver.switchTo().activeElement();
  }

  @SuppressWarnings("unchecked")
  <T> T ask(String script, Object... arguments) {
    return (T) driver.executeScript("return " + script, arguments);
  }

  /** How many CSS pixels the page is wider than its window. */
  long tooWide() {
    return this.<Long>ask(
        "document.documentElement.scrollWidth - document.documentElement.clientWidth");
  }

  /** Keeps a picture of the whole page under target/screens, if pictures are asked for. */
  void keep(String name) {
    if (PICTURES) {
      picture(name, true);
    }
  }

  /** Keeps a picture of what the window shows under target/screens, if pictures are asked for. */
  void keepWindow(String name) {
    if (PICTURES) {
      picture(name, false);
    }
  }

  /** Keeps a picture of the whole page of a test that failed. */
  void keepFailed(String name) {
    picture("failed-" + name, true);
  }

  private void picture(String name, boolean whole) {
    Object picture =
        driver
            .executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", whole))
            .get("data");
    try {
      Files.createDirectories(SCREENS);
      Files.write(
          SCREENS.resolve(name + ".png"), Base64.getDecoder().decode(String.valueOf(picture)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the browser complained of since it was last asked: scripts that failed, policy. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(LogEntry::getMessage)
        .filter(message -> !ON_PURPOSE.matcher(message).find())
        .toList();
  }

  void refuseComplaints() {
    List<String> complaints = complaints();
    if (!complaints.isEmpty()) {
      throw new AssertionError("the browser complains: " + complaints);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
