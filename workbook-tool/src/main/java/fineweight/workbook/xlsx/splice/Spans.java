package fineweight.workbook.xlsx.splice;

import fineweight.workbook.xlsx.xml.StartTag;
import java.util.List;
import java.util.regex.Pattern;

/** The hint in a row's tag from which column to which its cells stand: {@code spans="1:21"}. */
final class Spans {
  private static final Pattern SPANS = Pattern.compile("\\d{1,5}:\\d{1,5}");

  private Spans() {}

  /** The tag with the columns that are written taken in; the same tag if it gives no hint. */
  static String with(String tag, List<ColumnTarget> targets, Wish[] wishes) {
    int first = Integer.MAX_VALUE;
    int last = 0;
    for (int i = 0; i < wishes.length; i++) {
      if (wishes[i] != null && wishes[i].writes()) {
        first = Math.min(first, targets.get(i).column() + 1);
        last = Math.max(last, targets.get(i).column() + 1);
      }
    }
    return with(tag, first, last);
  }

  /**
   * The tag with columns taken in; the same tag if it gives no hint.
   *
   * @param first from 1
   * @param last from 1
   */
  private static String with(String tag, int first, int last) {
    String old = StartTag.get(tag, "spans");
    if (old == null || !SPANS.matcher(old).matches()) {
      return tag;
    }
    int colon = old.indexOf(':');
    int from = Integer.parseInt(old, 0, colon, 10);
    int to = Integer.parseInt(old, colon + 1, old.length(), 10);
    if (from <= first && last <= to) {
      return tag;
    }
    return StartTag.with(tag, "spans", Math.min(from, first) + ":" + Math.max(to, last));
  }
}
