package fineweight.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fineweight.metal.Metal;
import fineweight.settings.FeedSettings;
import fineweight.settings.SettingException;
import fineweight.settings.SettingsPlace;
import fineweight.settings.SpotFile;
import fineweight.spot.SpotPrices;
import fineweight.tool.CommandRun;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Prices from a server that is good, slow, wrong, huge or hostile. */
@Timeout(60)
class PriceFeedTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String GOOD = "{\"day\": \"2026-11-24\", \"silver\": 30.25}";

  @TempDir Path folder;
  private final List<String> warnings = new ArrayList<>();

  private Path settings(String address) throws IOException {
    return Files.writeString(
        folder.resolve("settings.json"),
        "{\"spot\": {\"address\": \""
            + address
            + "\", \"currency\": \"USD\", \"date at\": \"/day\", \"prices\": {\"XAG\": {\"at\":"
            + " \"/silver\"}}, \"time-out seconds\": 1, \"attempts\": 2, \"largest bytes\": 20000}}");
  }

  private SpotPrices fetch(LocalServer server) throws IOException, SettingException {
    return fetch(server, TODAY);
  }

  private SpotPrices fetch(LocalServer server, LocalDate day) throws IOException, SettingException {
    return new PriceFeed(FeedSettings.read(settings(server.address())), warnings::add).prices(day);
  }

  private static String silver(SpotPrices prices) {
    return prices.of(Metal.SILVER).orElseThrow().perTroyOunce().toPlainString();
  }

  private void refused(LocalServer server, String words) {
    assertThatThrownBy(() -> fetch(server))
        .isInstanceOf(SettingException.class)
        .hasMessageContaining(words)
        .hasMessageContaining("--spot");
  }

  @Test
  void theFigureIsTakenExactlyWithItsDate() throws Exception {
    try (LocalServer server = LocalServer.saying(GOOD)) {
      SpotPrices prices = fetch(server);
      assertThat(silver(prices)).isEqualTo("30.25");
      assertThat(prices.date()).isEqualTo(LocalDate.of(2026, 11, 24));
      assertThat(warnings).isEmpty();
      assertThat(server.calls()).isEqualTo(1);
    }
  }

  @Test
  void aTextOfPlainFiguresIsAPrice() throws Exception {
    try (LocalServer server =
        LocalServer.saying("{\"day\": \"2026-11-25T08:00:00Z\", \"silver\": \"30.10\"}")) {
      assertThat(silver(fetch(server))).isEqualTo("30.1");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "-30",
        "0",
        "\"-1\"",
        "\"30 USD\"",
        "\"1,234.50\"",
        "\"NaN\"",
        "\"Infinity\"",
        "null",
        "true",
        "[30]",
        "1e999999999",
        "1e-999999999",
        "99999999999999"
      })
  void whatIsNoPriceIsRefused(String figure) throws Exception {
    try (LocalServer server =
        LocalServer.saying("{\"day\": \"2026-11-25\", \"silver\": " + figure + "}")) {
      refused(server, "not with a price above zero");
      assertThat(server.calls()).isEqualTo(1);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"day\": \"2026-11-25\", \"silver\": NaN}",
        "{\"silver\": 30, \"silver\": 31}",
        "{\"silver\": 30",
        "{\"silver\": 30} {}",
        "<html>"
      })
  void whatIsNoJsonIsRefused(String body) throws Exception {
    try (LocalServer server = LocalServer.saying(body)) {
      refused(server, "JSON that cannot be read");
    }
  }

  @Test
  void deepJsonIsRefused() throws Exception {
    try (LocalServer server = LocalServer.saying("[".repeat(9000) + "]".repeat(9000))) {
      refused(server, "JSON that cannot be read");
    }
  }

  @Test
  void aDateToComeIsRefused() throws Exception {
    try (LocalServer server = LocalServer.saying("{\"day\": \"2027-11-25\", \"silver\": 30}")) {
      refused(server, "2027-11-25");
    }
  }

  @Test
  void anotherTypeIsRefused() throws Exception {
    try (LocalServer server =
        new LocalServer((exchange, call) -> LocalServer.send(exchange, 200, "text/html", GOOD))) {
      refused(server, "text/html");
    }
  }

  @Test
  void anEndlessAnswerIsBrokenOff() throws Exception {
    try (LocalServer server =
        new LocalServer(
            (exchange, call) -> {
              exchange.getResponseHeaders().set("Content-Type", "application/json");
              exchange.sendResponseHeaders(200, 0);
              OutputStream out = exchange.getResponseBody();
              while (!Thread.currentThread().isInterrupted()) {
                out.write(new byte[1000]);
              }
            })) {
      refused(server, "more than 20000 bytes");
    }
  }

  @Test
  void anAnswerThatDripsIsNotWaitedFor() throws Exception {
    try (LocalServer server =
        new LocalServer(
            (exchange, call) -> {
              exchange.getResponseHeaders().set("Content-Type", "application/json");
              exchange.sendResponseHeaders(200, 0);
              for (int i = 0; i < 100; i++) {
                exchange.getResponseBody().write(' ');
                exchange.getResponseBody().flush();
                Thread.sleep(200);
              }
            })) {
      refused(server, "within 1 seconds");
      assertThat(server.calls()).isEqualTo(2);
    }
  }

  @Test
  void redirectsWithoutEndAreNotFollowed() throws Exception {
    try (LocalServer server =
        new LocalServer(
            (exchange, call) -> {
              exchange.getResponseHeaders().set("Location", "/again" + call);
              exchange.sendResponseHeaders(302, -1);
            })) {
      refused(server, "without end");
      assertThat(server.calls()).isEqualTo(6);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"http://example.invalid/prices.json", "file:///etc/passwd", "", "::"})
  void aRedirectToWhatIsNotAskedIsRefused(String place) throws Exception {
    try (LocalServer server =
        new LocalServer(
            (exchange, call) -> {
              exchange.getResponseHeaders().set("Location", place);
              exchange.sendResponseHeaders(301, -1);
            })) {
      refused(server, place.isEmpty() ? "without end" : "not asked");
    }
  }

  @Test
  void aFaultThatPassesIsTriedAgain() throws Exception {
    try (LocalServer server =
        new LocalServer(
            (exchange, call) ->
                LocalServer.send(exchange, call == 1 ? 500 : 200, "application/json", GOOD))) {
      assertThat(silver(fetch(server))).isEqualTo("30.25");
      assertThat(server.calls()).isEqualTo(2);
    }
  }

  @Test
  void aFaultThatDoesNotPassIsNotTriedAgain() throws Exception {
    try (LocalServer server =
        new LocalServer((exchange, call) -> LocalServer.send(exchange, 404, "text/plain", "no"))) {
      refused(server, "HTTP status 404");
      assertThat(server.calls()).isEqualTo(1);
    }
  }

  @Test
  void theLastGoodPricesAreUsedWithTheirAgeAndAWarning() throws Exception {
    try (LocalServer server =
        new LocalServer(
            (exchange, call) ->
                LocalServer.send(exchange, call == 1 ? 200 : 503, "application/json", GOOD))) {
      fetch(server);
      assertThat(silver(fetch(server))).isEqualTo("30.25");
      assertThat(warnings).singleElement().asString().contains("2026-11-24 (1 day old)");
      warnings.clear();
      assertThat(silver(fetch(server, TODAY.plusDays(6)))).isEqualTo("30.25");
      assertThat(warnings).hasSize(2);
      assertThat(warnings.get(1)).contains("7 days old").contains("after 3");
      assertThat(SpotFile.read(PriceFeed.place(folder.resolve("settings.json"))).date())
          .isEqualTo(LocalDate.of(2026, 11, 24));
    }
    try (LocalServer other =
        new LocalServer((exchange, call) -> LocalServer.send(exchange, 404, "text/plain", "no"))) {
      refused(other, "no earlier price of it is kept");
    }
  }

  @Test
  void aServerThatIsNotThereIsSaid() throws Exception {
    LocalServer gone = LocalServer.saying(GOOD);
    gone.close();
    refused(gone, "could not be asked");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"http://example.invalid/p", "ftp://127.0.0.1/p", "https:", "prices", "http:///p"})
  void anAddressThatIsNotSafeIsRefused(String address) throws Exception {
    Path file = settings(address);
    assertThatThrownBy(() -> FeedSettings.read(file))
        .isInstanceOf(SettingException.class)
        .hasMessageContaining("https://");
  }

  @Test
  void theCommandFetchesOnlyWhenAsked() throws Exception {
    Path coins =
        Files.writeString(folder.resolve("coins.csv"), "Year,Denomination\n1964,quarter\n");
    try (LocalServer server = LocalServer.saying(GOOD)) {
      Path settings = settings(server.address());
      assertThat(CommandRun.of("refresh", coins, "--settings", settings).code()).isEqualTo(2);
      assertThat(CommandRun.of("refresh", coins, "--spot", "XAG=30").code()).isZero();
      assertThat(server.calls()).isZero();
      CommandRun run = CommandRun.of("refresh", coins, "--fetch", "--settings", settings);
      assertThat(run.code()).as(run.err()).isZero();
      assertThat(run.out()).contains("at the spot prices of 2026-11-24");
      assertThat(server.calls()).isEqualTo(1);
    }
  }

  @Test
  void theSampleInTheDocumentsWorksAndKeepsToItsSchema() throws Exception {
    Path docs = Path.of(System.getProperty("fineweight.root", ".."), "docs");
    String sample = Files.readString(docs.resolve("sample-prices/settings.json"));
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(docs.resolve("settings.schema.json")));
    assertThat(schema.validate(sample, InputFormat.JSON)).isEmpty();
    assertThat(schema.validate(sample.replace("/metals/gold", "metals"), InputFormat.JSON))
        .isNotEmpty();
    Process server =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                docs.resolve("sample-prices/SampleServer.java").toString(),
                "0")
            .start();
    try {
      String address = server.inputReader().readLine();
      Path file =
          Files.writeString(
              folder.resolve("sample.json"),
              sample.replace("http://127.0.0.1:8017/prices.json", address));
      SpotPrices prices = new PriceFeed(FeedSettings.read(file), warnings::add).prices(TODAY);
      assertThat(silver(prices)).isEqualTo("30");
      assertThat(prices.prices()).hasSize(3);
    } finally {
      server.destroy();
      server.waitFor();
    }
  }

  /** XDG Base Directory Specification 0.8: paths must be absolute, relative ones are ignored. */
  @Test
  void theSettingsStandWhereThePlatformKeepsThem() {
    Path home = Path.of("/home/somebody");
    assertThat(SettingsPlace.of(Map.of(), "Linux", home))
        .isEqualTo(home.resolve(".config/fineweight/settings.json"));
    assertThat(SettingsPlace.of(Map.of("XDG_CONFIG_HOME", "/etc/own"), "Linux", home))
        .isEqualTo(Path.of("/etc/own/fineweight/settings.json"));
    assertThat(SettingsPlace.of(Map.of("XDG_CONFIG_HOME", "own"), "Linux", home))
        .isEqualTo(home.resolve(".config/fineweight/settings.json"));
  }
}
