package fineweight.standard;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The catalogue as pages to read: one table for each issuer, an index, and the list of what rests
 * on memory. Made from the data, so that page and figure cannot differ.
 */
public final class CatalogueReference {
  private static final String HEAD =
      "| coin | type | years | mint marks | marked out by | alloy (parts per thousand) | gross g | fine g | source | certainty | id |\n"
          + "|---|---|---|---|---|---|---|---|---|---|---|\n";

  private final Map<String, List<CoinStandard>> byCountry = new TreeMap<>();
  private final Collection<CoinStandard> all;

  private CatalogueReference(Standards standards) {
    this.all = standards.all();
    for (CoinStandard standard : all) {
      byCountry
          .computeIfAbsent(standard.issue().country(), unused -> new ArrayList<>())
          .add(standard);
    }
  }

  /** Every page as Markdown by its file name. */
  public static Map<String, String> pages(Standards standards) {
    CatalogueReference reference = new CatalogueReference(standards);
    Map<String, String> pages = new TreeMap<>();
    pages.put("README.md", reference.index());
    pages.put("from-memory.md", reference.fromMemory());
    reference.byCountry.forEach(
        (country, rows) -> pages.put(fileName(country), page(country, rows)));
    return pages;
  }

  private static String fileName(String country) {
    return country.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + ".md";
  }

  private String index() {
    StringBuilder page = new StringBuilder("# The catalogue\n\n");
    page.append("Made from the data files by a test; do not edit. ")
        .append(all.size())
        .append(" standards: ")
        .append(count(Certainty.TWO_SOURCES))
        .append(" rest on two texts, ")
        .append(count(Certainty.SOURCED))
        .append(" on one, ")
        .append(count(Certainty.MEMORY))
        .append(
            " on memory ([list](from-memory.md)).\n\n| issuer | standards | of them from memory |\n|---|---|---|\n");
    byCountry.forEach(
        (country, rows) ->
            page.append("| [")
                .append(country)
                .append("](")
                .append(fileName(country))
                .append(") | ")
                .append(rows.size())
                .append(" | ")
                .append(rows.stream().filter(CatalogueReference::isFromMemory).count())
                .append(" |\n"));
    return page.toString();
  }

  private long count(Certainty certainty) {
    return all.stream().filter(row -> row.evidence().certainty() == certainty).count();
  }

  private static boolean isFromMemory(CoinStandard row) {
    return row.evidence().certainty() == Certainty.MEMORY;
  }

  private String fromMemory() {
    List<CoinStandard> precious =
        all.stream()
            .filter(CatalogueReference::isFromMemory)
            .filter(row -> row.specification().isPrecious())
            .toList();
    StringBuilder page = new StringBuilder("# What rests on memory\n\n");
    page.append("Made from the data files by a test; do not edit. For these ")
        .append(precious.size())
        .append(
            " standards with precious metal no text was found that states mass and fineness; a further ")
        .append(count(Certainty.MEMORY) - precious.size())
        .append(
            " without precious metal are not listed. A row's note says so wherever one is used.\n\n");
    precious.forEach(
        row ->
            page.append("- ")
                .append(row.issue().country())
                .append(", ")
                .append(coin(row))
                .append(", ")
                .append(row.issue().years())
                .append(" (`")
                .append(row.id())
                .append("`)\n"));
    return page.toString();
  }

  private static String page(String country, List<CoinStandard> rows) {
    StringBuilder page =
        new StringBuilder(
            "# " + country + "\n\nMade from the data files by a test; do not edit.\n\n");
    page.append(HEAD);
    rows.forEach(row -> page.append(line(row)));
    return page.toString();
  }

  private static String line(CoinStandard row) {
    return "| "
        + String.join(
            " | ",
            List.of(
                cell(coin(row)),
                cell(String.join("; ", row.issue().types())),
                row.issue().years().toString(),
                row.issue().mints().toString(),
                cell(row.distinction().variant()),
                row.specification().composition().toString(),
                row.specification().grossMass().map(CatalogueReference::grams).orElse(""),
                fine(row.fineContent()),
                cell(
                    row.evidence().locator()
                        + " ["
                        + String.join(", ", row.evidence().sources())
                        + "]"),
                row.evidence().certainty().words(),
                "`" + row.id() + "`"))
        + " |\n";
  }

  private static String coin(CoinStandard row) {
    return String.join(" or ", row.issue().denominations());
  }

  private static String fine(FineContent content) {
    List<String> parts = new ArrayList<>();
    for (Map.Entry<Metal, Mass> entry : content.masses().entrySet()) {
      if (entry.getKey().isPrecious()) {
        parts.add(entry.getKey().symbol() + " " + grams(entry.getValue()));
      }
    }
    return String.join("; ", parts);
  }

  private static String grams(Mass mass) {
    BigDecimal rounded =
        mass.grams().setScale(Math.min(4, mass.grams().scale()), RoundingMode.HALF_UP);
    return rounded.toPlainString();
  }

  private static String cell(String text) {
    return text.replace("|", "/").replace("[]", "").strip();
  }
}
