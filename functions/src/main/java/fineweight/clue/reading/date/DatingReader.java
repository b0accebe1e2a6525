package fineweight.clue.reading.date;

import fineweight.clue.Dating;
import fineweight.clue.Dating.Kind;
import fineweight.clue.FieldRole;
import fineweight.clue.passage.Passage;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Reads dates: from the year column strictly, from descriptions where a number can be nothing else.
 */
public final class DatingReader {
  private static final Pattern YEAR = Pattern.compile("\\d{4}");
  private static final List<FieldRole> ORDER =
      List.of(FieldRole.DENOMINATION, FieldRole.TYPE, FieldRole.VARIETY, FieldRole.DESCRIPTION);

  private DatingReader() {}

  /**
   * @param counted whether the number of pieces is said already, so that "64 Kennedys" holds a year
   */
  public static Dating read(List<Passage> passages, boolean counted) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.YEAR) {
        Dating column = YearColumn.read(passage);
        repeated(passages, column);
        return column;
      }
    }
    for (FieldRole role : ORDER) {
      for (Passage passage : passages) {
        if (passage.role() == role) {
          Dating dating = inText(passage, counted);
          if (dating.kind() != Kind.UNSAID) {
            return dating;
          }
        }
      }
    }
    return Dating.UNSAID;
  }

  /**
   * The column's year said again among other words is no amount: "1943-P", not 1943 pence. In a
   * column of denominations it is one: 2000 pesetas of 2000.
   */
  private static void repeated(List<Passage> passages, Dating column) {
    for (Passage passage : passages) {
      boolean words = passage.role().isText() && passage.role() != FieldRole.DENOMINATION;
      for (int i = 0; i < passage.size() && words; i++) {
        String text = passage.word(i).text();
        boolean again =
            YEAR.matcher(text).matches() && column.years().contains(Integer.parseInt(text));
        if (again && !passage.isTaken(i)) {
          passage.take(i, i + 1);
        }
      }
    }
  }

  /** Years among other words. */
  static Dating inText(Passage passage, boolean counted) {
    Dating open = OpenYears.read(passage);
    if (open.kind() != Kind.UNSAID) {
      return open;
    }
    Dating full = TextYears.read(passage);
    return full.kind() != Kind.UNSAID ? full : ShortYears.read(passage, counted);
  }
}
