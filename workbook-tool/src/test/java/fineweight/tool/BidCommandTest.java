package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may be bid for a rough list; prices and terms are invented. */
class BidCommandTest {
  @TempDir Path folder;

  private Path list(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void aListInPlainLinesLeavesPremiumTaxPostageAndMargin() throws Exception {
    Path lot = list("lot.txt", "5 Morgan dollars 1881\n\n10 dimes 1941\n");
    CommandRun run =
        CommandRun.of(
            "bid",
            lot,
            "--spot",
            "XAG=30",
            "--premium",
            "20",
            "--tax",
            "8",
            "--postage",
            "12",
            "--margin",
            "15");
    assertThat(run.err()).isEmpty();
    // 5 x 26.73 g x 0.900 and 10 x 2.5 g x 0.900, / 31.1034768 g x 30: 116.02 and 21.70
    // (Acts of 18 January 1837 and 12 February 1873). 85 % of it is 117.062; 81.07 + 20 %
    // + 8 % of that + 12 is 117.06, a cent more would be too much.
    assertThat(run.out())
        .contains("116.02  5 Morgan dollars 1881")
        .contains("worth 137.72 USD")
        .contains("bid at most 81.07 USD")
        .contains("a margin of 15 % of the worth")
        .contains("bid 81.07 + premium 16.21 + tax 7.78 + postage 12.00 = 117.06 USD");
  }

  @Test
  void anOpenPieceGivesALowAndAHighBid() throws Exception {
    Path lot = list("lot.csv", "Year,Denomination,Type,Count\n1942,nickel,Jefferson,40\n");
    CommandRun run = CommandRun.of("bid", lot, "--spot", "XAG=30");
    assertThat(run.out())
        .contains("1 open", "?", "if every open piece is the better one")
        // Face, or 40 x 5 g x 0.350 / 31.1034768 g x 30.
        .contains("at least 2.00 USD, at most 67.52 USD")
        .contains("bid 67.52 + premium 0.00");
  }

  @Test
  void saysWhatIsWrong() throws Exception {
    Path lot = list("lot.txt", "1941 dime\n");
    assertThat(CommandRun.of("bid", lot).err()).contains("no price is given");
    assertThat(CommandRun.of("bid", folder.resolve("none.txt"), "--spot", "XAG=30").err())
        .contains("cannot be read");
    CommandRun both =
        CommandRun.of("bid", lot, "--spot", "XAG=30", "--margin", "5", "--markup", "5");
    assertThat(both.code()).isEqualTo(ExitCode.USAGE.code());
    assertThat(CommandRun.of("bid", lot, "--spot", "XAG=30", "--premium", "-5").err())
        .contains("premium is zero or more");
  }

  @Test
  void aHeapTellsOuncesAndItsWear() {
    CommandRun run =
        CommandRun.of(
            "weigh", "1,240", "g", "mixed", "90", "%", "--face", "50", "--spot", "XAG=30");
    // 25 g to the dollar and 900 fine (Coinage Act of 1873, section 15): 1250 g as struck.
    assertThat(run.out())
        .contains("35.8802 fine troy ounces")
        .contains("0.80 % by wear")
        .contains("1076.41 USD", "21.53 times its face value, unworn 21.70");
  }

  @Test
  void aHeapThatWasNotUnderstoodIsRefused() {
    assertThat(CommandRun.of("weigh", "12 oz 90 %").err()).contains("kitchen ounce");
    assertThat(CommandRun.of("weigh", "12 g of something").err()).contains("say 90 %");
    assertThat(CommandRun.of("weigh", "90 %").err()).contains("names no mass");
    assertThat(CommandRun.of("weigh", "500", "g", "90", "%", "--face", "50").out())
        .contains("clad pieces");
  }
}
