package fineweight.workbook.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Changes every attribute and every text of the edited sample, one at a time. */
class EveryValueTest {
  private static final Pattern VALUE =
      Pattern.compile("(?<attribute>[\\w:]+)=\"(?<value>[^\"]*)\"|>(?<text>[^<>]+)<");

  /** All that may change without a word, for it belongs to the edit. */
  private static final List<String> FREE =
      List.of(
          "sheet1.xml ref=A1:H5",
          "sheet1.xml spans=1:5",
          // The new column's width (an upside-down range is the validator's business), our cells'
          // look.
          "sheet1.xml min=5",
          "sheet1.xml width=12",
          "sheet1.xml customWidth=1",
          "sheet1.xml s=3",
          "sheet1.xml s=3",
          // Our cells' own content.
          "sheet1.xml t=s",
          "sheet1.xml t=s",
          "sheet1.xml 5",
          "sheet1.xml 0.7734",
          "sheet1.xml 0.0723400000001",
          "sheet1.xml 6",
          // Counts, which the validator looks after, and what was appended.
          "table1.xml count=2",
          "sharedStrings.xml count=8",
          "sharedStrings.xml uniqueCount=7",
          "sharedStrings.xml Fine oz",
          "sharedStrings.xml which metal?",
          "styles.xml count=2",
          "styles.xml numFmtId=165",
          "styles.xml formatCode=0.0000",
          "styles.xml count=1",
          "styles.xml count=4",
          "styles.xml numFmtId=165",
          "styles.xml fontId=0",
          // Our name.
          "workbook.xml hidden=1",
          "workbook.xml Coins!$E$1");

  @Test
  void everyOtherValueIsWatched() throws IOException {
    byte[] before = SampleBook.zip(SampleBook.before());
    List<String> missed = new ArrayList<>();
    int tried = 0;
    for (String part : SampleBook.after().keySet()) {
      Matcher value = VALUE.matcher(SampleBook.after().get(part));
      while (value.find()) {
        tried++;
        String group = value.group("value") == null ? "text" : "value";
        Map<String, String> parts = SampleBook.after();
        String changed =
            parts.get(part).substring(0, value.start(group))
                + other(value.group(group))
                + parts.get(part).substring(value.end(group));
        parts.put(part, changed);
        if (!caught(before, SampleBook.zip(parts))) {
          String name = part.substring(part.lastIndexOf('/') + 1);
          String attribute = group.equals("text") ? "" : value.group("attribute") + "=";
          missed.add(name + " " + attribute + value.group(group));
        }
      }
    }
    assertThat(tried).isGreaterThan(240);
    assertThat(missed).containsExactlyInAnyOrderElementsOf(FREE);
  }

  /** Something else of the same kind. */
  private static String other(String value) {
    return value.matches("\\d+") ? String.valueOf(Long.parseLong(value) + 1) : value + "x";
  }

  private static boolean caught(byte[] before, byte[] after) {
    try {
      return !Oracle.findings(before, after, SampleBook.expected()).isEmpty();
    } catch (IOException | RuntimeException unreadable) {
      return true;
    }
  }
}
