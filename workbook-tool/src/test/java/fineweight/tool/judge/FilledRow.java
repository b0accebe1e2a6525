package fineweight.tool.judge;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Our cells of one row, as another reader sees them.
 *
 * @param cells text by heading, numbers in plain notation with a point; blank ones left out
 */
public record FilledRow(Map<String, String> cells) {
  /** The headings of the columns that hold fine troy ounces. */
  static final Map<String, String> OUNCES =
      new TreeMap<>(
          Map.of(
              "XAU", "Gold ozt",
              "XAG", "Silver ozt",
              "XPT", "Platinum ozt",
              "XPD", "Palladium ozt"));

  /** How a row stands. */
  public enum State {
    VALUED,
    SEVERAL,
    NOT_KNOWN,
    NOTHING,
    BLANK
  }

  public State state() {
    String words = cells.getOrDefault("State", "");
    if (words.isEmpty()) {
      return State.BLANK;
    }
    return words.endsWith("nothing to value")
        ? State.NOTHING
        : words.endsWith("not known")
            ? State.NOT_KNOWN
            : words.endsWith("several") ? State.SEVERAL : valued(words);
  }

  private static State valued(String words) {
    if (words.endsWith("valued")) {
      return State.VALUED;
    }
    throw new IllegalStateException("an unknown state: " + words);
  }

  /** Fine troy ounces of a metal by its ISO 4217 code; zero where the cell is blank. */
  public BigDecimal ounces(String code) {
    return number(OUNCES.get(code)).orElse(BigDecimal.ZERO);
  }

  public Optional<BigDecimal> melt() {
    return number("Melt USD");
  }

  public Optional<BigDecimal> meltAtMost() {
    return number("Melt at most USD");
  }

  public String text(String heading) {
    return cells.getOrDefault(heading, "");
  }

  /** Whether any figure of metal or money stands in the row. */
  public boolean hasFigure() {
    return OUNCES.values().stream().anyMatch(cells::containsKey)
        || melt().filter(melt -> melt.signum() != 0).isPresent();
  }

  private Optional<BigDecimal> number(String heading) {
    return Optional.ofNullable(cells.get(heading)).map(BigDecimal::new);
  }

  @Override
  public String toString() {
    StringBuilder words = new StringBuilder(cells.getOrDefault("State", "(blank)"));
    OUNCES.forEach((code, heading) -> append(words, code, heading));
    append(words, "melt", "Melt USD");
    append(words, "by", "Standard");
    append(words, "note", "Note");
    return words.toString();
  }

  private void append(StringBuilder words, String name, String heading) {
    if (cells.containsKey(heading)) {
      words.append(", ").append(name).append(' ').append(cells.get(heading));
    }
  }
}
