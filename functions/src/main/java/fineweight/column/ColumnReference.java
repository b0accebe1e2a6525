package fineweight.column;

import java.util.List;

/** The page of columns, made from the columns themselves and from the list of headings. */
final class ColumnReference {
  private static final int MOST_HEADINGS = 12;

  private ColumnReference() {}

  static String markdown() {
    StringBuilder page =
        new StringBuilder(
            "# Columns\n\n"
                + "This page is made from the program. Columns are known again by hidden names, so move or hide them as\n"
                + "you like; a column of yours with the same heading stays yours, and ours gets another.\n\n"
                + "## Columns that are added\n\n"
                + "| Heading | Number format | What it holds |\n|---|---|---|\n");
    for (CalculatedColumn column : CalculatedColumn.values()) {
      page.append(
          "| %s | %s | %s |\n"
              .formatted(
                  column.heading("USD"),
                  column.format().isEmpty() ? "text" : "`" + column.format() + "`",
                  meaning(column)));
    }
    page.append(
            "\nMoney columns carry the code of the currency of the prices; USD here is one.\n\n")
        .append(
            "## States\n\n| In a sheet | Where only ASCII is possible | Meaning |\n|---|---|---|\n");
    for (RowState state : RowState.values()) {
      page.append(
          "| %s | %s | %s |\n".formatted(state.label(), state.plainLabel(), meaning(state)));
    }
    page.append("\n## Columns of yours that are read\n\n")
        .append(
            "Headings may stand in any row and order, in capitals or not, with a unit in brackets. Up to\n")
        .append(MOST_HEADINGS)
        .append(" of the headings that are understood:\n\n")
        .append("| Read as | Such headings |\n|---|---|\n");
    for (InputColumn column : InputColumn.values()) {
      List<String> headings = Headings.standard().of(column);
      page.append(
          "| %s | %s |\n"
              .formatted(
                  column.words(),
                  String.join(
                      ", ", headings.subList(0, Math.min(MOST_HEADINGS, headings.size())))));
    }
    return page.toString();
  }

  private static String meaning(CalculatedColumn column) {
    return switch (column) {
      case KEY -> "a number for each row; only where you have no number column of your own";
      case STATE -> "how far the row is known, as a sign and a word";
      case METAL -> "the metals that count";
      case FINENESS -> "parts of that metal in a thousand";
      case GROSS -> "grams of one piece: your scale, else the law or mint publication";
      case FINE -> "grams of the precious metal in one piece";
      case GOLD, SILVER -> "fine troy ounces in the whole row, unrounded";
      case PLATINUM, PALLADIUM -> "the same; only where a row holds that metal";
      case MELT -> "what the metal of the row comes to at spot; the lowest where a coin is open";
      case MELT_AT_MOST -> "the highest where a coin is open";
      case WORTH -> "your own price, else the higher of metal at your payout and face value";
      case COST_SHARE -> "the row's part of its lot's cost; only with lots";
      case LEAST_PRICE -> "the price that covers cost, fees and wanted margin; only for sale";
      case TYPE_SET -> "what the piece is in the set, and a proposal; only with a set";
      case METAL_GROUND -> "law, publication or words behind the metal, and how certain they are";
      case WORTH_GROUND -> "which price, payout or face value counts";
      case STANDARD -> "the key of the coin in the [catalogue](catalogue/README.md)";
      case NOTE -> "what to look at, or the question that settles it";
    };
  }

  private static String meaning(RowState state) {
    return switch (state) {
      case VALUED -> "one coin fits";
      case SEVERAL -> "two or more fit: the lowest figure counts, a question tells what settles it";
      case NOT_KNOWN -> "none fits, or the words are not enough; the note says why";
      case NOTHING -> "no coin, or no precious metal in it";
    };
  }
}
