package fineweight.template;

import java.util.Optional;

/**
 * The columns of a new inventory, in their order. Their headings are the words that collectors use,
 * so they are understood without any setting.
 */
enum InventoryColumn {
  NUMBER("No", 6, "0", "Number", "A number of its own for each row; it never changes."),
  COUNTRY("Country", 14, "", "Country", "Where the coin was issued, such as United States."),
  YEAR("Year", 9, "0", "Year", "The date on the coin. Type 1964-66 for mixed dates."),
  MINT("Mint mark", 8, "", "Mint mark", "The letter on the coin; leave empty if there is none."),
  DENOMINATION(
      "Denomination", 14, "", "Denomination", "What the coin says: 25 cents, half dollar."),
  TYPE("Type", 24, "", "Type", "Design or name: Morgan, war nickel, silver round 1 oz .999."),
  COUNT("Count", 7, "0", "Count", "How many pieces this row stands for."),
  GRADE(
      "Grade",
      7,
      "0",
      "Grade",
      "1 to 70. Counts only with a certificate; otherwise the coin is raw."),
  CERTIFICATE("Cert no", 12, "@", "Cert no", "Number of the certificate, if there is one."),
  WEIGHT(
      "Weight g",
      9,
      "0.00##",
      "Weight",
      "Grams of ONE piece on your scale. It settles many doubts."),
  LOT("Lot", 22, "", "Lot", "Name of the purchase. Lots are added up on a sheet of their own."),
  COST("Cost", 10, "#,##0.00", "Cost", "What you paid for the whole row."),
  CURRENCY("Currency", 10, "", "Currency", "Three-letter code of the money you paid in."),
  OWN_PRICE(
      "My price", 10, "#,##0.00", "My price", "What you think one piece is worth to a collector."),
  STATUS("Status", 9, "", "Status", "Where the piece stands."),
  NOTES("Notes", 34, "", "Notes", "Anything you want. Words such as plated or holed are read too.");

  private final String heading;
  private final double width;
  private final String format;
  private final String promptTitle;
  private final String prompt;

  InventoryColumn(String heading, double width, String format, String promptTitle, String prompt) {
    this.heading = heading;
    this.width = width;
    this.format = format;
    this.promptTitle = promptTitle;
    this.prompt = prompt;
  }

  String heading() {
    return heading;
  }

  /** In characters. */
  double width() {
    return width;
  }

  /** The number format; empty for the general one. */
  Optional<String> format() {
    return format.isEmpty() ? Optional.empty() : Optional.of(format);
  }

  String promptTitle() {
    return promptTitle;
  }

  /** What to type, shown when a cell is chosen. */
  String prompt() {
    return prompt;
  }

  /** Whether its cells are long texts, which wrap. */
  boolean isLong() {
    return this == NOTES || this == TYPE;
  }
}
