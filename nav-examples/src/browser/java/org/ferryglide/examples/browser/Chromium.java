package org.ferryglide.examples.browser;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** A headless Chromium, spoken to over its DevTools protocol. */
final class Chromium {
  private static final int SECONDS = 30;

  private final Process process;
  private final Path profile;
  private final WebSocket socket;
  private final AtomicInteger ids = new AtomicInteger();
  private final Map<Integer, CompletableFuture<String>> answers = new ConcurrentHashMap<>();
  private volatile CompletableFuture<Boolean> loading = new CompletableFuture<>();

  private Chromium(Process process, Path profile, String address) throws Exception {
    this.process = process;
    this.profile = profile;
    this.socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(URI.create(address), new Listener())
            .get(SECONDS, TimeUnit.SECONDS);
    call("Page.enable", "{}");
  }

  /** Where it is installed; empty if it is not. */
  static String program() {
    return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
        .filter(path -> Files.isExecutable(Path.of(path)))
        .findFirst()
        .orElse("");
  }

  static Chromium start() throws Exception {
    Path profile = Files.createTempDirectory("ferryglide-browser");
    Process process =
        new ProcessBuilder(
                List.of(
                    program(),
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--disable-dev-shm-usage",
                    "--hide-scrollbars",
                    "--remote-debugging-port=0",
                    "--remote-allow-origins=*",
                    "--user-data-dir=" + profile,
                    "about:blank"))
            .redirectErrorStream(true)
            .redirectOutput(profile.resolve("log").toFile())
            .start();
    Path port = profile.resolve("DevToolsActivePort");
    for (int i = 0; i < SECONDS * 10; i++) {
      if (Files.exists(port) && Files.readAllLines(port).size() > 1) {
        String pages =
            HttpClient.newHttpClient()
                .send(
                    HttpRequest.newBuilder(
                            URI.create(
                                "http://127.0.0.1:" + Files.readAllLines(port).get(0) + "/json"))
                        .build(),
                    HttpResponse.BodyHandlers.ofString())
                .body();
        int page = pages.indexOf("\"type\": \"page\"");
        if (page >= 0) {
          return new Chromium(
              process, profile, field(pages.substring(page), "webSocketDebuggerUrl"));
        }
      }
      Thread.sleep(100);
    }
    process.destroy();
    throw new IOException(
        "no answer from " + program() + ": " + Files.readString(profile.resolve("log")));
  }

  private final class Listener implements WebSocket.Listener {
    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket webSocket, CharSequence data, boolean last) {
      text.append(data);
      if (last) {
        take(text.toString());
        text.setLength(0);
      }
      webSocket.request(1);
      return null;
    }

    private void take(String message) {
      if (message.contains("Page.loadEventFired")) {
        loading.complete(true);
      } else if (message.startsWith("{\"id\":")) {
        int id = Integer.parseInt(message.substring(6, message.indexOf(',')));
        CompletableFuture<String> answer = answers.remove(id);
        if (answer != null) {
          answer.complete(message);
        }
      }
    }
  }

  private String call(String method, String parameters) throws Exception {
    int id = ids.incrementAndGet();
    CompletableFuture<String> answer = new CompletableFuture<>();
    answers.put(id, answer);
    socket
        .sendText(
            "{\"id\":" + id + ",\"method\":\"" + method + "\",\"params\":" + parameters + "}", true)
        .get(SECONDS, TimeUnit.SECONDS);
    return answer.get(SECONDS, TimeUnit.SECONDS);
  }

  /** The text of a field of JSON, the first of its name. */
  static String field(String json, String name) {
    int at = json.indexOf("\"" + name + "\":");
    if (at < 0) {
      throw new IllegalStateException("no " + name + " in " + json);
    }
    int from = json.indexOf('"', at + name.length() + 3) + 1;
    StringBuilder text = new StringBuilder();
    for (int i = from; json.charAt(i) != '"'; i++) {
      char c = json.charAt(i);
      if (c == '\\') {
        c = json.charAt(++i);
        if (c == 'u') {
          c = (char) Integer.parseInt(json.substring(i + 1, i + 5), 16);
          i += 4;
        } else if (c == 'n') {
          c = '\n';
        } else if (c == 't') {
          c = '\t';
        }
      }
      text.append(c);
    }
    return text.toString();
  }

  private static String quoted(String text) {
    StringBuilder json = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        json.append('\\').append(c);
      } else if (c < 0x20) {
        json.append("\\u").append(String.format(java.util.Locale.ROOT, "%04x", (int) c));
      } else {
        json.append(c);
      }
    }
    return json.append('"').toString();
  }

  /** Shows a file in a window of a size, as a phone does. */
  void show(Path file, int wide, int high) throws Exception {
    call(
        "Emulation.setDeviceMetricsOverride",
        "{\"width\":" + wide + ",\"height\":" + high + ",\"deviceScaleFactor\":2,\"mobile\":true}");
    loading = new CompletableFuture<>();
    call("Page.navigate", "{\"url\":" + quoted(file.toUri().toString()) + "}");
    loading.get(SECONDS, TimeUnit.SECONDS);
  }

  /** The value of an expression, as text; promises are waited for. */
  String value(String expression) throws Exception {
    String answer =
        call(
            "Runtime.evaluate",
            "{\"expression\":"
                + quoted("Promise.resolve(" + expression + ").then(String)")
                + ",\"awaitPromise\":true,\"returnByValue\":true}");
    return field(answer, "value");
  }

  /** Runs a script that has no answer. */
  void run(String script) throws Exception {
    call("Runtime.evaluate", "{\"expression\":" + quoted(script) + "}");
  }

  /** The window, or the whole page below it too. */
  byte[] picture(boolean whole) throws Exception {
    String all = whole ? ",\"captureBeyondViewport\":true" : "";
    if (whole) {
      String size =
          value("document.documentElement.clientWidth+','+document.documentElement.scrollHeight");
      all +=
          ",\"clip\":{\"x\":0,\"y\":0,\"width\":"
              + size.split(",")[0]
              + ",\"height\":"
              + size.split(",")[1]
              + ",\"scale\":0.5}";
    }
    return bytes(call("Page.captureScreenshot", "{\"format\":\"png\"" + all + "}"));
  }

  /** Shows the page by the rules of print, or of the screen again. */
  void printed(boolean print) throws Exception {
    call("Emulation.setEmulatedMedia", "{\"media\":\"" + (print ? "print" : "") + "\"}");
  }

  /** The page as it is printed. */
  byte[] pdf(double wideMillimetres, double highMillimetres) throws Exception {
    return bytes(
        call(
            "Page.printToPDF",
            "{\"preferCSSPageSize\":true,\"printBackground\":true,\"paperWidth\":"
                + wideMillimetres / 25.4
                + ",\"paperHeight\":"
                + highMillimetres / 25.4
                + "}"));
  }

  private static byte[] bytes(String answer) {
    return Base64.getDecoder().decode(field(answer, "data").getBytes(StandardCharsets.US_ASCII));
  }

  void close() throws Exception {
    socket.abort();
    process.destroy();
    if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
    }
    try (Stream<Path> all = Files.walk(profile)) {
      all.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
    }
  }
}
