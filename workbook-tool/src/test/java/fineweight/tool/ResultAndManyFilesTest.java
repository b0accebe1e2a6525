package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The result for other programs, and runs over several files. */
class ResultAndManyFilesTest {
  private static final String CSV = "Year,Denomination,Count\n1964,quarter,4\n";

  @TempDir Path folder;

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static JsonNode valid(String json) throws IOException {
    Path place = Path.of(System.getProperty("fineweight.root", ".."), "docs/result.schema.json");
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(place));
    assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    assertThat(
            schema.validate(
                json.replaceFirst("\"exitCode\" : \\d+", "\"exitCode\" : 0.5"), InputFormat.JSON))
        .isNotEmpty();
    return new ObjectMapper().readTree(json);
  }

  /** 31 U.S.C. 5112 as it stood until 1965: 6.25 g of 900 silver; 31.1034768 g to the ozt. */
  @Test
  void aResultOnStandardOutputIsJsonAndNothingElse() throws IOException {
    Path coins = file("coins.csv", CSV);
    Told told = Told.by("refresh", coins, "--spot", "XAG=30", "--result", "-");
    JsonNode result = valid(told.out());
    assertThat(told.code()).isZero();
    assertThat(result.at("/files/0/outcome").asText()).isEqualTo("filled");
    assertThat(result.at("/files/0/melt/least").asText()).isEqualTo("21.70");
    assertThat(result.at("/files/0/fineTroyOunces/XAG").asText()).startsWith("0.72339");
    assertThat(result.at("/files/0/melt/least").isTextual()).isTrue();
    assertThat(
            valid(Told.by("refresh", coins, "--spot", "XAG=30", "--result", "-").out())
                .at("/files/0/outcome")
                .asText())
        .isEqualTo("unchanged");
  }

  @Test
  void aFailureIsInTheResultToo() throws IOException {
    Path result = folder.resolve("result.json");
    Told told =
        Told.by("refresh", folder.resolve("none.csv"), "--spot", "XAG=30", "--result", result);
    JsonNode json = valid(Files.readString(result));
    assertThat(json.at("/exitCode").asInt()).isEqualTo(told.code()).isEqualTo(ExitCode.FILE.code());
    assertThat(json.at("/files/0/complaint").asText() + "\n").isEqualTo(told.err());
    Told wrong = Told.by("refresh", "x.csv", "--spot", "XAG=-1", "--result", "-");
    assertThat(valid(wrong.out()).at("/complaint").asText()).isNotEmpty();
    assertThat(wrong.code()).isEqualTo(ExitCode.USAGE.code());
  }

  @Test
  void theResultIsNotWrittenOverAWorkbook() throws IOException {
    Path coins = file("coins.csv", CSV);
    Told told = Told.by("refresh", coins, "--spot", "XAG=30", "--result", coins);
    assertThat(told.code()).isEqualTo(ExitCode.USAGE.code());
    assertThat(coins).hasContent(CSV);
  }

  @Test
  void quietSaysNothingButComplaints() throws IOException {
    Path coins = file("coins.csv", CSV);
    assertThat(Told.by("refresh", coins, "--dry-run", "--quiet").out()).isEmpty();
    Told told = Told.by("refresh", coins, "--spot", "XAG=30", "--quiet");
    assertThat(told).isEqualTo(new Told(0, "", ""));
    assertThat(Files.readString(coins)).isNotEqualTo(CSV);
  }

  @Test
  void aFileThatFailsDoesNotStopTheOthers() throws IOException {
    Path first = file("a.csv", CSV);
    Files.write(folder.resolve("b.xlsx"), new byte[] {'P', 'K', 3, 4, 0, 0, 1});
    Path last = file("c.csv", CSV);
    file("d.csv", "street,town\nOld Road,Hull\n");
    file("a.fineweight-1.csv", CSV);
    Told told = Told.by("refresh", folder, "--spot", "XAG=30");
    assertThat(told.code()).isEqualTo(ExitCode.DAMAGED.code());
    assertThat(told.out())
        .contains("4 files: 2 filled, 1 left alone, 1 failed.")
        .contains("Melt of all: at least 43.40 USD.");
    assertThat(told.out().lines()).allMatch(line -> line.length() <= 150);
    assertThat(told.err()).contains("b.xlsx").hasLineCount(1);
    assertThat(first).content().contains("Melt");
    assertThat(last).content().contains("Melt");
    assertThat(folder.resolve("a.fineweight-1.csv")).hasContent(CSV);
  }

  @Test
  void whatIsPrintedOverManyFilesIsBounded() throws IOException {
    for (int i = 0; i < 120; i++) {
      file("coins" + i + ".csv", "Year\n");
    }
    Told told = Told.by("refresh", folder, "--dry-run");
    assertThat(told.out().lines().count()).isLessThan(70);
    assertThat(told.out()).contains("and 60 more files");
    assertThat(told.code()).isEqualTo(ExitCode.NO_INVENTORY.code());
  }
}
