package fineweight.refresh.inventory;

import fineweight.column.FoundTable;
import fineweight.column.InputColumn;
import fineweight.column.RowText;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What its owner says becomes or became of a row. Immutable.
 *
 * @param kind what he says
 * @param pieces how many of the row are gone where he names a number ("sold 2"); empty for all
 * @param soldFor what the buyer paid for those that are gone
 * @param fees of the sale, postage included
 * @param day on which they went
 * @param offered how many of what is left are for sale; empty for none
 * @param mixed whether parts of the row went in different ways, so that one price and one day tell
 *     too little
 */
public record Fate(
    Kind kind,
    OptionalInt pieces,
    Optional<BigDecimal> soldFor,
    Optional<BigDecimal> fees,
    Optional<LocalDate> day,
    OptionalInt offered,
    boolean mixed) {
  public static final Fate UNSAID =
      new Fate(
          Kind.UNSAID,
          OptionalInt.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalInt.empty(),
          false);

  /** The kinds of fate. */
  public enum Kind {
    UNSAID,
    KEEP,
    FOR_SALE,
    SOLD,
    RETURNED,
    TRADED;

    /** Whether such pieces have left the collection. */
    public boolean isGone() {
      return this == SOLD || this == RETURNED || this == TRADED;
    }
  }

  private static final Map<Pattern, Kind> WORDS = new LinkedHashMap<>();
  private static final int ALL = Integer.MAX_VALUE;
  private static final Pattern NUMBER = Pattern.compile("\\b(\\d{1,6})\\b");
  private static final Pattern PARTS =
      Pattern.compile("[,;/&+]|\\b(?:and|und|et|en)\\b", Pattern.UNICODE_CHARACTER_CLASS);
  private static final String YES = "(yes|y|x|ja|j|oui|si|sí|true|1|✓)";

  static {
    word("not sold|unsold|not for sale|nicht verkauft|niet verkocht", Kind.UNSAID);
    word(
        "for sale|to sell|sell|zu verkaufen|verkaufen|te koop|à vendre|in vendita|en venta|listed",
        Kind.FOR_SALE);
    word("sold|verkauft|verkocht|vendue?|vendut[oa]|vendid[oa]", Kind.SOLD);
    word("returned|sent back|zurückgegeben|retour", Kind.RETURNED);
    word("traded|swapped|getauscht|geruild|échangée?", Kind.TRADED);
    word("keeper|keep|kept|behalten|houden|garder|tenere", Kind.KEEP);
  }

  private static void word(String words, Kind kind) {
    WORDS.put(Pattern.compile("\\b(" + words + ")\\b", Pattern.UNICODE_CHARACTER_CLASS), kind);
  }

  /** Reads the columns of a row that are about its sale. */
  static Fate of(RowText row, FoundTable table) {
    String words = text(row, table, InputColumn.STATUS).toLowerCase(Locale.ROOT);
    Optional<BigDecimal> soldFor = amount(text(row, table, InputColumn.SOLD_FOR));
    Optional<LocalDate> day = day(text(row, table, InputColumn.DATE_SOLD));
    List<Part> parts = parts(words, heading(table));
    if (words.isEmpty() && (soldFor.isPresent() || day.isPresent())) {
      parts = List.of(new Part(Kind.SOLD, OptionalInt.empty()));
    }
    List<Part> gone = parts.stream().filter(part -> part.kind().isGone()).toList();
    OptionalInt offered =
        number(parts.stream().filter(part -> part.kind() == Kind.FOR_SALE).toList());
    if (gone.isEmpty()) {
      Kind kind =
          offered.isPresent() ? Kind.FOR_SALE : parts.isEmpty() ? Kind.UNSAID : parts.get(0).kind();
      return kind == Kind.UNSAID
          ? UNSAID
          : new Fate(
              kind,
              OptionalInt.empty(),
              soldFor,
              amount(text(row, table, InputColumn.FEES)),
              day,
              offered,
              false);
    }
    OptionalInt pieces = number(gone);
    return new Fate(
        gone.get(0).kind(),
        pieces.isPresent() && pieces.getAsInt() == ALL ? OptionalInt.empty() : pieces,
        soldFor,
        amount(text(row, table, InputColumn.FEES)),
        day,
        offered,
        gone.stream().map(Part::kind).distinct().count() > 1);
  }

  /** A part of a row: "sold 2" or "2 kept". */
  private record Part(Kind kind, OptionalInt pieces) {}

  /** What is said of the parts of a row; the words as a whole where they name one thing only. */
  private static List<Part> parts(String words, String heading) {
    List<Part> parts = new ArrayList<>();
    for (String part : PARTS.split(words)) {
      Kind kind = kind(part.strip(), heading);
      if (kind != Kind.UNSAID) {
        parts.add(new Part(kind, number(part)));
      }
    }
    if (parts.size() > 1) {
      return parts;
    }
    Kind kind = kind(words, heading);
    return kind == Kind.UNSAID ? List.of() : List.of(new Part(kind, number(words)));
  }

  private static OptionalInt number(String words) {
    Matcher number = NUMBER.matcher(words);
    return number.find() && !words.matches(YES)
        ? OptionalInt.of(Integer.parseInt(number.group(1)))
        : OptionalInt.empty();
  }

  /** How many pieces all the parts have; all of the row where one names no number. */
  private static OptionalInt number(List<Part> parts) {
    if (parts.isEmpty()) {
      return OptionalInt.empty();
    }
    boolean all = parts.stream().anyMatch(part -> part.pieces().isEmpty());
    return OptionalInt.of(
        all ? ALL : parts.stream().mapToInt(part -> part.pieces().getAsInt()).sum());
  }

  private static Kind kind(String words, String heading) {
    // Under a heading that asks ("Sold?"), a yes is meant by the heading's own word.
    String meant = words.matches(YES) ? heading : words;
    for (Map.Entry<Pattern, Kind> entry : WORDS.entrySet()) {
      if (entry.getKey().matcher(meant).find()) {
        return entry.getValue();
      }
    }
    return Kind.UNSAID;
  }

  private static String heading(FoundTable table) {
    return table
        .first(InputColumn.STATUS)
        .map(place -> table.headings().getOrDefault(place, ""))
        .orElse("")
        .toLowerCase(Locale.ROOT);
  }

  private static String text(RowText row, FoundTable table, InputColumn column) {
    return table.first(column).map(row::at).orElse("").strip();
  }

  private static Optional<BigDecimal> amount(String text) {
    return text.isEmpty()
        ? Optional.empty()
        : RowMoney.amount(text).filter(figure -> figure.signum() >= 0);
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException notADay) {
      // A date cell of 1 January reads as its year.
      return text.matches("(19|20)\\d{2}")
          ? Optional.of(LocalDate.of(Integer.parseInt(text), 1, 1))
          : Optional.empty();
    }
  }
}
