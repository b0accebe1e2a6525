package fineweight.clue.reading.date;

import fineweight.clue.Dating;
import fineweight.clue.Dating.Kind;
import fineweight.clue.FieldRole;
import fineweight.clue.passage.Passage;
import java.util.List;

/**
 * Reads dates: from the year column strictly, from descriptions where a number can be nothing else.
 */
public final class DatingReader {
  private static final List<FieldRole> ORDER =
      List.of(FieldRole.DENOMINATION, FieldRole.TYPE, FieldRole.VARIETY, FieldRole.DESCRIPTION);

  private DatingReader() {}

  /**
   * @param counted whether the number of pieces is said already, so that "64 Kennedys" holds a year
   */
  public static Dating read(List<Passage> passages, boolean counted) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.YEAR) {
        return YearColumn.read(passage);
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
