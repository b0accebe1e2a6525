package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fineweight.workbook.office.Office;
import fineweight.workbook.validity.WorkbookValidator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Labels for an invented inventory, through the command. */
class LabelsCommandTest {
  private static final double MILLIMETRES_A_POINT = 25.4 / 72;

  @TempDir Path folder;
  private Path inventory;

  @BeforeEach
  void anInventoryAsText() throws IOException {
    inventory = folder.resolve("coins.csv");
    Files.writeString(
        inventory,
        """
        No,Lot,Year,Mint,Denomination,Type,Count,Grade,Cost,Status,Place,Cert
        1,A,1881,S,dollar,Morgan,1,MS-63,40.00,keep,Safe,7654321
        2,A,1921,,dollar,Morgan,3,VF,75.00,for sale,Album 1,
        3,B,1964,,half dollar,Kennedy,2,"XF, cleaned",16.00,,Album 2,
        4,B,1942,,5 cents,Jefferson,1,F,1.00,,Album 2,
        5,B,1907,,20 dollars,Liberty,1,"AU, holed",2000.00,sold,Safe,
        6,B,,,=1+1 token,,1,,,,=cmd,
        """);
  }

  private Told run(Path target, Object... more) {
    List<Object> words = new ArrayList<>(List.of("labels", inventory, target));
    words.addAll(List.of(more));
    return Told.by(words.toArray());
  }

  private List<String> texts(Path file) throws IOException {
    List<String> texts = new ArrayList<>();
    try (XSSFWorkbook workbook =
        new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      for (Row row : workbook.getSheet("Labels")) {
        for (Cell cell : row) {
          assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
          texts.add(cell.getStringCellValue().replace("\n", "|"));
        }
      }
    }
    return texts;
  }

  private List<String> labels(Object... more) throws IOException {
    Path file = Files.createTempDirectory(folder, "labels").resolve("labels.xlsx");
    List<Object> words = new ArrayList<>(List.of("--size", "60x40"));
    words.addAll(List.of(more));
    Told told = run(file, words.toArray());
    assertThat(told.code()).as(told.err()).isZero();
    return texts(file);
  }

  /**
   * 26.73 g x 0.900 (Act of 18 January 1837) and 12.5 g x 0.900 (Act of 12 February 1873) are 24.06
   * and 11.25 g fine. The five cents of 1942 are of two metals, so their metal is open.
   */
  @Test
  void oneLabelForEachPieceThatIsStillThereAndNoPrice() throws IOException {
    assertThat(labels())
        .containsExactly(
            "dollar, Morgan|United States 1881-S|silver 900, 24.06 g fine|MS-63 certified 7654321|No 1, Safe",
            "dollar, Morgan|United States 1921|silver 900, 24.06 g fine|VF|No 2, Album 1",
            "dollar, Morgan|United States 1921|silver 900, 24.06 g fine|VF|No 2, Album 1",
            "dollar, Morgan|United States 1921|silver 900, 24.06 g fine|VF|No 2, Album 1",
            "half dollar, Kennedy|United States 1964|silver 900, 11.25 g fine|XF|cleaned|No 3, Album 2",
            "half dollar, Kennedy|United States 1964|silver 900, 11.25 g fine|XF|cleaned|No 3, Album 2",
            "five cents ?|United States 1942|copper, nickel ?|F|No 4, Album 2",
            "1 1 token 1|No 6, =cmd");
  }

  @Test
  void onlyTheChosenPieces() throws IOException {
    assertThat(labels("--by-row", "--for-sale"))
        .containsExactly(
            "dollar, Morgan|United States 1921|silver 900, 24.06 g fine|3 pieces|VF|No 2, Album 1");
    assertThat(labels("--kept", "--by-row")).hasSize(4);
    assertThat(labels("--place", "album 2", "--by-row")).hasSize(2);
    assertThat(labels("--place", "Safe", "--place", "Album 1")).hasSize(4);
    assertThat(labels("--of-lot", "A", "--by-row")).hasSize(2);
    assertThat(labels("--number", "1,3")).hasSize(3);
  }

  /** 75 for three; a margin of 20 % of the price: 75 / 0.8 and 25 / 0.8. */
  @Test
  void theLeastPriceOnlyIfWantedAndOnlyOnWhatIsForSale() throws IOException {
    Object[] priced = {"--price", "--margin", "20", "--spot", "XAG=30", "--text", "{number}"};
    assertThat(labels(priced))
        .containsExactly(
            "1", "2|31.25 USD", "2|31.25 USD", "2|31.25 USD", "3|cleaned", "3|cleaned", "4", "6");
    List<Object> byRow = new ArrayList<>(List.of(priced));
    byRow.addAll(List.of("--by-row", "--for-sale"));
    assertThat(labels(byRow.toArray())).containsExactly("2|3 pieces|93.75 USD");
  }

  @Test
  void pricesWantedWithoutSpotPricesAreAskedFor() {
    Told told = run(folder.resolve("labels.xlsx"), "--size", "38x21", "--price");
    assertThat(told.code()).isEqualTo(ExitCode.USAGE.code());
    assertThat(told.err()).contains("--spot");
    assertThat(folder.resolve("labels.xlsx")).doesNotExist();
  }

  @Test
  void asTextWithAColumnForEachField() throws IOException {
    Path file = folder.resolve("labels.csv");
    Told told = run(file);
    assertThat(told.code()).as(told.err()).isZero();
    List<String> lines = Files.readAllLines(file);
    assertThat(lines).hasSize(9);
    assertThat(lines.get(0))
        .isEqualTo(
            "number,country,denomination,type,year,mint,date,metal,fine,ounces,grade,holder,faults,lot,place,count,price");
    assertThat(lines.get(1))
        .isEqualTo(
            "1,United States,dollar,Morgan,1881,S,1881-S,silver 900,24.06 g fine,0.7734 ozt,MS-63,certified 7654321,,A,Safe,,");
    // No office shall take the place for a formula.
    assertThat(lines.get(8)).contains(",'=cmd,");
  }

  @Test
  void printsInTrueSize() throws Exception {
    Files.writeString(
        inventory,
        """
        No,Year,Denomination,Type,Count
        1,1964,half dollar,Kennedy,8
        """);
    Path file = folder.resolve("labels.xlsx");
    Path page = folder.resolve("pages/labels.pdf");
    assertThat(
            run(
                    file,
                    "--size",
                    "38x21",
                    "--margins",
                    "13,8,13,8",
                    "--gaps",
                    "2.5x4",
                    "--skip",
                    "39",
                    "--text",
                    "n{number}")
                .code())
        .isZero();
    assertThat(WorkbookValidator.findings(file)).isEmpty();
    Office.onThisMachine().pdf(file, page.getParent());
    // Four across and eleven down, 39 used and 8 labels: five on the first page, three on the next.
    assertThat(pages(page)).isEqualTo(2);
    List<double[]> centres = centres(page);
    assertThat(centres).hasSize(8);
    // The last place of the tenth row, then the eleventh row, then the first row of page 2.
    isAt(centres.get(0), 8 + 3 * 40.5 + 19, 13 + 9 * 25 + 10.5);
    isAt(centres.get(1), 8 + 19, 13 + 10 * 25 + 10.5);
    isAt(centres.get(4), 8 + 3 * 40.5 + 19, 13 + 10 * 25 + 10.5);
    isAt(centres.get(5), 8 + 19, 13 + 10.5);
    isAt(centres.get(7), 8 + 2 * 40.5 + 19, 13 + 10.5);
  }

  private static void isAt(double[] centre, double across, double down) {
    assertThat(centre[0]).isCloseTo(across, within(0.3));
    // The box of a word is not that of its letters, so the height is less exact.
    assertThat(centre[1]).isCloseTo(down, within(0.5));
  }

  private static int pages(Path pdf) throws IOException {
    Matcher page =
        Pattern.compile("/Type\\s*/Page\\b")
            .matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1));
    return (int) page.results().count();
  }

  /** The middle of each label's word in millimetres from the upper left corner of its page. */
  private List<double[]> centres(Path pdf) throws IOException, InterruptedException {
    Path tool = Path.of("/usr/bin/pdftotext");
    Assumptions.assumeTrue(Files.isExecutable(tool), "no pdftotext on this machine");
    Path boxes = folder.resolve("boxes.html");
    Process process =
        new ProcessBuilder(tool.toString(), "-bbox", pdf.toString(), boxes.toString()).start();
    assertThat(process.waitFor()).isZero();
    List<double[]> centres = new ArrayList<>();
    Pattern.compile("xMin=\"(.*?)\" yMin=\"(.*?)\" xMax=\"(.*?)\" yMax=\"(.*?)\">n\\d")
        .matcher(Files.readString(boxes))
        .results()
        .forEach(
            word -> {
              double x = Double.parseDouble(word.group(1)) + Double.parseDouble(word.group(3));
              double y = Double.parseDouble(word.group(2)) + Double.parseDouble(word.group(4));
              centres.add(new double[] {x / 2 * MILLIMETRES_A_POINT, y / 2 * MILLIMETRES_A_POINT});
            });
    return centres;
  }

  @Test
  void saysWhatIsWrong() throws IOException {
    Path file = folder.resolve("labels.xlsx");
    assertThat(run(file).err()).contains("--size is missing");
    assertThat(run(file, "--size", "38").err()).contains("--size: \"38\" is not understood");
    assertThat(run(file, "--size", "38x21", "--paper", "huge").err()).contains("--paper", "A4");
    assertThat(run(file, "--size", "38x21", "--margins", "1,2").err()).contains("--margins");
    assertThat(run(file, "--size", "38x21", "--skip", "-1").err()).contains("--skip");
    assertThat(run(file, "--size", "300x21").err()).contains("does not fit");
    assertThat(run(file, "--size", "38x21", "--text", "{typ}").err()).contains("{typ} is no field");
    assertThat(run(file, "--size", "38x21", "--place", "Attic").err())
        .contains("no piece has \"Attic\"", "Album 2");
    assertThat(run(file, "--size", "38x21", "--kept", "--for-sale").err()).contains("not both");
    assertThat(run(folder.resolve("labels.doc"), "--size", "38x21").err()).contains(".csv");
    assertThat(file).doesNotExist();
    Files.writeString(file, "mine");
    assertThat(run(file, "--size", "38x21").err()).contains("exists already");
    assertThat(file).hasContent("mine");
  }

  @Test
  void aRowOfWhichAPartIsForSaleIsOneLabelUnlessItMatters() throws IOException {
    Files.writeString(
        inventory,
        """
        No,Description,Count,Status
        1,Roosevelt dimes 1946-1964,5,for sale 2
        """);
    Object[] words = {"--by-row", "--text", "{number} {date} {count}"};
    assertThat(labels(words)).containsExactly("1 1946-1964 5 pieces");
    assertThat(labels("--by-row", "--for-sale", "--text", "{number} {count}"))
        .containsExactly("1 2 pieces");
    assertThat(labels("--by-row", "--kept", "--text", "{number} {count}"))
        .containsExactly("1 3 pieces");
  }

  @Test
  void fullLabelsAndBagsAreTold() throws IOException {
    Files.writeString(
        inventory,
        """
        No,Year,Denomination,Type,Count
        1,1964,half dollar,Kennedy,400
        """);
    Told told = run(folder.resolve("labels.xlsx"), "--size", "9x6");
    assertThat(told.out()).contains("1 label of 9 x 6 mm on 1 page");
    assertThat(told.err()).contains("400 pieces got one label").contains("may be too small");
  }

  @Test
  void theInventoryIsOnlyRead() throws IOException {
    byte[] before = Files.readAllBytes(inventory);
    labels("--by-row");
    assertThat(Files.readAllBytes(inventory)).isEqualTo(before);
    assertThat(run(inventory, "--size", "38x21").code()).isNotZero();
    assertThat(Files.readAllBytes(inventory)).isEqualTo(before);
  }
}
