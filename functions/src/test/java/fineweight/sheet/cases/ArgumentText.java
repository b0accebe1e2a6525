package fineweight.sheet.cases;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the arguments of a case, written as in a formula: numbers, shares with a per cent sign,
 * texts in quotes, nothing for an argument that is left out, {@code BLANK} for a blank cell, and
 * areas in braces, their cells parted by semicolons and their rows by strokes.
 */
final class ArgumentText {
  private final String text;
  private int at;

  private ArgumentText(String text) {
    this.text = text;
  }

  static List<CaseArgument> read(String text) {
    ArgumentText reader = new ArgumentText(text);
    List<CaseArgument> arguments = new ArrayList<>();
    do {
      arguments.add(reader.argument());
    } while (reader.take(';'));
    if (reader.at < text.length()) {
      throw new IllegalArgumentException("not understood: " + text.substring(reader.at));
    }
    return arguments;
  }

  private CaseArgument argument() {
    return take('{') ? area() : CaseArgument.single(cell());
  }

  private CaseArgument area() {
    List<List<CaseCell>> rows = new ArrayList<>();
    do {
      List<CaseCell> row = new ArrayList<>();
      do {
        row.add(cell());
      } while (take(';'));
      rows.add(row);
    } while (take('|'));
    if (!take('}')) {
      throw new IllegalArgumentException("an area without its end: " + text);
    }
    return new CaseArgument(rows, true);
  }

  private CaseCell cell() {
    skip();
    if (at < text.length() && text.charAt(at) == '"') {
      return new CaseCell(CaseCell.Kind.TEXT, quoted());
    }
    int start = at;
    while (at < text.length() && ";|}".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    String word = text.substring(start, at).strip();
    if (word.isEmpty() || word.equals("BLANK")) {
      return new CaseCell(word.isEmpty() ? CaseCell.Kind.LEFT_OUT : CaseCell.Kind.BLANK, "");
    }
    BigDecimal number =
        word.endsWith("%")
            ? new BigDecimal(word.substring(0, word.length() - 1)).movePointLeft(2)
            : new BigDecimal(word);
    return new CaseCell(CaseCell.Kind.NUMBER, number.toPlainString());
  }

  private String quoted() {
    StringBuilder words = new StringBuilder();
    at++;
    while (text.charAt(at) != '"' || (at + 1 < text.length() && text.charAt(at + 1) == '"')) {
      at += text.charAt(at) == '"' ? 1 : 0;
      words.append(text.charAt(at++));
    }
    at++;
    skip();
    return words.toString();
  }

  private boolean take(char wanted) {
    skip();
    if (at < text.length() && text.charAt(at) == wanted) {
      at++;
      return true;
    }
    return false;
  }

  private void skip() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }
}
