package fineweight.workbook.csv;

import java.util.List;

/**
 * A record, which is a line of the file unless a quoted field holds line breaks. Immutable.
 *
 * @param row from 0, blank lines counted too
 * @param number of its first line in the file, from 1, as an editor shows it
 * @param fields at least one; a blank line has one empty field
 * @param end the line break as found; empty if the file ends without one
 */
record Line(int row, long number, List<Field> fields, String end) {
  Line {
    fields = List.copyOf(fields);
  }

  boolean isBlank() {
    return fields.size() == 1 && fields.get(0).raw().isEmpty();
  }

  /** The meaning of a field; empty where the line has none. */
  String text(int column) {
    return column < fields.size() ? fields.get(column).text() : "";
  }
}
