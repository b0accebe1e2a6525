package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every description written by hand gets the answer that trade knowledge gives it. */
class DescriptionCasesTest {
  private static final Map<Verdict, List<String>> LINES = new EnumMap<>(Verdict.class);
  private static int answerable;

  @BeforeAll
  static void judgeAll() throws IOException {
    for (Verdict verdict : Verdict.values()) {
      LINES.put(verdict, new ArrayList<>());
    }
    for (DescriptionCase expected : DescriptionCase.all()) {
      Answered got = Answered.to(expected.text());
      answerable += expected.answer().equals("one") || expected.answer().equals("base") ? 1 : 0;
      LINES
          .get(Verdict.of(expected, got))
          .add(
              expected.line()
                  + ": "
                  + expected.text()
                  + "\n    must be "
                  + expected.answer()
                  + " n="
                  + expected.pieces()
                  + " "
                  + expected.standards()
                  + " "
                  + expected.alsoOk()
                  + " ("
                  + expected.why()
                  + ")\n    is "
                  + got.said());
    }
    report();
  }

  private static void report() throws IOException {
    List<String> text = new ArrayList<>();
    StringBuilder summary = new StringBuilder("descriptions:");
    LINES.forEach(
        (verdict, lines) -> {
          summary.append(' ').append(verdict).append(' ').append(lines.size());
          if (verdict != Verdict.RIGHT) {
            lines.forEach(line -> text.add(verdict + " " + line));
          }
        });
    summary.append(", answerable ").append(answerable);
    text.add(summary.toString());
    System.out.println(summary);
    Files.write(Path.of("target", "descriptions-report.txt"), text);
  }

  @Test
  void noAnswerIsWrong() {
    assertThat(LINES.get(Verdict.WRONG)).isEmpty();
  }

  @Test
  void atMostEightPerCentOfWhatHoldsEnoughIsLeftToAPerson() {
    int left = LINES.get(Verdict.ASKED).size() + LINES.get(Verdict.MISSED).size();
    assertThat(left * 100).isLessThanOrEqualTo(answerable * 8);
  }

  @Test
  void thereAreAtLeastSixHundredLines() {
    int lines = LINES.values().stream().mapToInt(List::size).sum();
    assertThat(lines).isGreaterThanOrEqualTo(600);
  }
}
