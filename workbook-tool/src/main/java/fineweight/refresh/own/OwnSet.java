package fineweight.refresh.own;

import fineweight.column.RowText;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import fineweight.standard.Years;
import fineweight.typeset.TypeEntry;
import fineweight.typeset.TypeSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads the places of a set that the collector lists himself. */
final class OwnSet {
  private final OwnTable table;
  private final CoinWords coins;
  private final Standards standards;
  private final String home;
  private final List<String> remarks;
  private final Set<String> keys = new HashSet<>();

  OwnSet(OwnTable table, CoinWords coins, Standards standards, String home, List<String> remarks) {
    this.table = table;
    this.coins = coins;
    this.standards = standards;
    this.home = home;
    this.remarks = remarks;
  }

  TypeSet read(String name) {
    List<TypeEntry> entries = new ArrayList<>();
    for (RowText line : table.rows()) {
      if (!place(line).isEmpty()) {
        try {
          entries.add(entry(line));
        } catch (IllegalArgumentException unusable) {
          remarks.add(table.remark(line, unusable.getMessage()));
        }
      }
    }
    return new TypeSet(name, entries);
  }

  private String place(RowText line) {
    String place = table.at(line, "place");
    return place.isEmpty() ? table.at(line, "coin") : place;
  }

  private TypeEntry entry(RowText line) {
    String dates = table.at(line, "years");
    Optional<Years> years =
        dates.isEmpty()
            ? Optional.empty()
            : Optional.of(Years.parse(dates.replace('–', '-').replace(" ", "").replace(',', ';')));
    List<CoinStandard> filling = filling(line, years);
    String denomination = table.at(line, "denomination");
    TypeEntry.Origin origin =
        new TypeEntry.Origin(
            filling.get(0).issue().country(),
            denomination.isEmpty() ? filling.get(0).issue().denomination() : denomination,
            filling.stream().map(CoinStandard::id).toList());
    String key = table.at(line, "key").isEmpty() ? place(line) : table.at(line, "key");
    String unique = dates.isEmpty() ? key : key + " " + dates;
    if (!keys.add(unique.toLowerCase(Locale.ROOT))) {
      throw new IllegalArgumentException(
          "a line above is the same place; delete one of them or give both a key");
    }
    return new TypeEntry(
        unique,
        place(line),
        origin,
        years.orElseGet(() -> all(filling)),
        mints(table.at(line, "mints")));
  }

  private List<CoinStandard> filling(RowText line, Optional<Years> years) {
    List<String> ids = list(table.at(line, "standards"));
    if (!ids.isEmpty()) {
      return ids.stream().map(this::standard).toList();
    }
    String denomination = table.at(line, "denomination");
    String coin = table.at(line, "coin");
    boolean byDenomination = coin.isEmpty() && !denomination.isEmpty();
    List<CoinStandard> found =
        byDenomination
            ? ofDenomination(table.at(line, "country"), denomination, years)
            : coins.meant(coin.isEmpty() ? place(line) : coin, years);
    if (found.isEmpty()) {
      throw new IllegalArgumentException(
          "\""
              + (byDenomination ? denomination : coin.isEmpty() ? place(line) : coin)
              + "\" is no coin that is known; write it under Coin as you do in the inventory, or the"
              + " ids of the column Standard under Standards");
    }
    return found;
  }

  private CoinStandard standard(String id) {
    return standards
        .byId(id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + id + "\" is no standard; take the ids of the column Standard"));
  }

  private List<CoinStandard> ofDenomination(
      String country, String denomination, Optional<Years> years) {
    return standards.of(country.isEmpty() ? home : country).stream()
        .filter(
            standard ->
                standard.issue().denominations().stream().anyMatch(denomination::equalsIgnoreCase))
        .filter(
            standard -> years.map(known -> standard.issue().years().overlaps(known)).orElse(true))
        .toList();
  }

  /** All dates of the standards, joined where they overlap. */
  private static Years all(List<CoinStandard> filling) {
    List<Years.Range> ranges = new ArrayList<>();
    filling.stream()
        .flatMap(standard -> standard.issue().years().ranges().stream())
        .sorted(Comparator.comparingInt(Years.Range::first))
        .forEach(
            range -> {
              Years.Range last = ranges.isEmpty() ? null : ranges.get(ranges.size() - 1);
              if (last != null && range.first() <= last.last()) {
                ranges.set(
                    ranges.size() - 1,
                    new Years.Range(last.first(), Math.max(last.last(), range.last())));
              } else {
                ranges.add(range);
              }
            });
    return new Years(ranges);
  }

  static List<String> mints(String text) {
    return list(text).stream()
        .map(
            mint ->
                mint.toLowerCase(Locale.ROOT).matches("none|-")
                    ? ""
                    : mint.toUpperCase(Locale.ROOT))
        .toList();
  }

  private static List<String> list(String text) {
    return Arrays.stream(text.split("[;,]"))
        .map(String::strip)
        .filter(piece -> !piece.isEmpty())
        .toList();
  }
}
