package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lists of what is for sale and what is gone, through the command; everything is invented. */
class SellingCommandTest {
  @TempDir Path folder;
  private Path inventory;

  @BeforeEach
  void anInventoryAsText() throws IOException {
    inventory = folder.resolve("coins.csv");
    Files.writeString(
        inventory,
        """
        No,Year,Denomination,Type,Cost,Status,Sold for,Fees,Date sold,Place,Picture,Cert
        1,1881,dollar,Morgan,20.00,sold,35.00,3.50,2026-03-02,,,
        2,1921,dollar,Morgan,35.00,for sale,,,,Safe,morgan.jpg,7654321
        3,1964,half dollar,Kennedy,8.00,,,,,,,
        """);
  }

  private CommandRun run(String... more) {
    String[] args = new String[more.length + 5];
    args[0] = "refresh";
    args[1] = inventory.toString();
    args[2] = "--spot";
    args[3] = "XAG=30";
    args[4] = "--spot-date=2026-11-02";
    System.arraycopy(more, 0, args, 5, more.length);
    return CommandRun.of((Object[]) args);
  }

  private Path fees(String json) throws IOException {
    Path file = folder.resolve("fees.json");
    return Files.writeString(file, json);
  }

  @Test
  void writesTheSaleListWithTheLeastPrice() throws Exception {
    Path list = folder.resolve("sale.csv");
    Path fees =
        fees("{\"name\": \"an invented fair\", \"currency\": \"USD\", \"commission\": \"10\"}");
    assertThat(
            run("--fees", fees.toString(), "--margin", "20", "--sale-list", list.toString()).code())
        .isZero();
    List<String> lines = Files.readAllLines(list);
    assertThat(lines).hasSize(2);
    // price - 10 % - 35.00 = 20 % of the price; melt 26.73 g x 0.900 / 31.1034768 g x 30.
    assertThat(lines.get(1))
        .isEqualTo(
            "2,3,United States,\"dollar, Morgan\",1921,,silver 900,1,,certified 7654321,none known,35.00,50.00,23.20,USD,Safe,morgan.jpg");
  }

  @Test
  void writesTheGainsByYearWithTheCaution() throws Exception {
    Path gains = folder.resolve("gains.csv");
    CommandRun run = run("--gains", gains.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("gone in 2026: 1 piece").contains("gain 11.50 USD");
    List<String> lines = Files.readAllLines(gains);
    assertThat(lines.get(1)).startsWith("2026,2026-03-02,1,").endsWith("31.50,20.00,11.50,USD");
    assertThat(lines.get(3)).contains("no tax advice");
  }

  @Test
  void writesWhatIsKeptWhereWithDateAndCaution() throws Exception {
    Path list = folder.resolve("places.csv");
    assertThat(run("--place-list", list.toString()).code()).isZero();
    List<String> lines = Files.readAllLines(list);
    assertThat(lines).hasSize(4);
    // 26.73 g x 0.900 / 31.1034768 g x 30 (Act of 18 January 1837).
    assertThat(lines.get(1))
        .startsWith("Safe,2026-11-02,2,United States,")
        .contains(",certified 7654321,none known,23.20,35.00,USD,morgan.jpg,")
        .contains("metal 23.20 USD");
    assertThat(lines.get(2)).startsWith(",2026-11-02,3,United States,");
    assertThat(lines.get(3)).contains("no appraisal");
  }

  @Test
  void saysWhatIsWrongWithAFileOfFees() throws Exception {
    assertThat(
            run("--fees", fees("{\"currency\": \"USD\", \"comission\": \"10\"}").toString()).err())
        .contains("\"comission\" is no field");
    assertThat(run("--fees", fees("{\"currency\": \"EUR\"}").toString()).err())
        .contains("EUR", "USD");
    assertThat(run("--fees", fees("{\"currency\": \"USD\", \"fixed\": \"half\"}").toString()).err())
        .contains("\"fixed\" is no number");
    assertThat(run("--fees", folder.resolve("none.json").toString()).err())
        .contains("cannot be read");
  }

  @Test
  void neverWritesAListOverTheWorkbook() throws Exception {
    byte[] before = Files.readAllBytes(inventory);
    CommandRun run = run("--sale-list", inventory.toString());
    assertThat(run.code()).isEqualTo(ExitCode.USAGE.code());
    assertThat(Files.readAllBytes(inventory)).isEqualTo(before);
  }

  @Test
  void refusesAnUnknownSet() {
    assertThat(run("--set", "mars").err()).contains("no set");
  }
}
