package fineweight.sheet.function;

import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/** What a cell hands to a function. Immutable. */
public sealed interface Argument {
  /** An argument that was left out. */
  Argument LEFT_OUT = new Blank();

  /** Left out, or a blank cell within an area. */
  record Blank() implements Argument {}

  /** A number; a blank cell outside an area counts as zero, as it does in arithmetic. */
  record Number(BigDecimal value) implements Argument {
    public Number {
      value = Decimals.normal(value);
    }
  }

  /** Any text, the empty one too. */
  record Text(String value) implements Argument {
    public Text {
      Objects.requireNonNull(value, "value");
    }
  }

  /**
   * A rectangle of cells.
   *
   * @param rows at least one, all of the same length; no area within
   */
  record Area(List<List<Argument>> rows) implements Argument {
    /**
     * @throws IllegalArgumentException if there is no cell, the rows differ in length, or an area
     *     stands within
     */
    public Area {
      rows = rows.stream().map(List::copyOf).toList();
      int width = rows.isEmpty() ? 0 : rows.get(0).size();
      if (width == 0 || rows.stream().anyMatch(row -> row.size() != width)) {
        throw new IllegalArgumentException("an area is a rectangle of at least one cell");
      }
      if (rows.stream().anyMatch(row -> row.stream().anyMatch(Area.class::isInstance))) {
        throw new IllegalArgumentException("an area holds single cells only");
      }
    }
  }

  /**
   * Whether it says nothing as words: left out, blank, an empty text, or zero, which is how some
   * programs hand over a blank cell.
   */
  default boolean saysNothing() {
    if (this instanceof Text text) {
      return text.value().isBlank();
    }
    if (this instanceof Number number) {
      return number.value().signum() == 0;
    }
    return this instanceof Blank
        || ((Area) this)
            .rows().stream().allMatch(row -> row.stream().allMatch(Argument::saysNothing));
  }

  /** The words of it: a number in plain notation, the cells of an area with blanks between. */
  default String words() {
    if (this instanceof Text text) {
      return text.value().strip();
    }
    if (this instanceof Number number) {
      return number.value().toPlainString();
    }
    if (this instanceof Blank) {
      return "";
    }
    StringBuilder joined = new StringBuilder();
    for (List<Argument> row : ((Area) this).rows()) {
      for (Argument cell : row) {
        if (!cell.saysNothing()) {
          joined.append(joined.isEmpty() ? "" : " ").append(cell.words());
        }
      }
    }
    return joined.toString();
  }
}
