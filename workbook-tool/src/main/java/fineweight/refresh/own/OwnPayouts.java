package fineweight.refresh.own;

import fineweight.column.RowText;
import fineweight.metal.Metal;
import fineweight.valuation.Payouts;
import fineweight.valuation.QuotedPayout;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/** Reads a list of payouts, and single ones. */
final class OwnPayouts {
  private final CurrencyUnit currency;
  private final List<String> remarks;
  private Payouts payouts = Payouts.atMelt();

  OwnPayouts(CurrencyUnit currency, List<String> remarks) {
    this.currency = currency;
    this.remarks = remarks;
  }

  Payouts payouts() {
    return payouts;
  }

  void addAll(OwnTable table) {
    Set<String> seen = new HashSet<>();
    for (RowText line : table.rows()) {
      String metal = table.at(line, "metal");
      String quote = table.at(line, "payout");
      if (metal.isEmpty() || quote.isEmpty()) {
        continue;
      }
      Optional<Metal> known = metal(metal);
      String pieceClass = pieceClass(table.at(line, "class"));
      if (known.isEmpty()) {
        remarks.add(
            table.remark(line, "\"" + metal + "\" is no metal; write gold, silver, XAU or Cu"));
      } else if (!seen.add(known.get() + " " + pieceClass)) {
        remarks.add(
            table.remark(
                line,
                "a line above has a payout for the same metal and class; delete one of them"));
      } else {
        add(table, line, known.get(), pieceClass, quote);
      }
    }
  }

  private void add(OwnTable table, RowText line, Metal metal, String pieceClass, String quote) {
    try {
      payouts = payouts.with(metal, pieceClass, QuotedPayout.read(percent(quote)).in(currency));
    } catch (IllegalArgumentException unusable) {
      remarks.add(table.remark(line, unusable.getMessage()));
    }
  }

  /** A cell formatted as per cent holds its share: 0.95 is 95 %. */
  private static String percent(String quote) {
    return quote.matches("[01]\\.\\d+|[12]")
        ? new java.math.BigDecimal(quote).movePointRight(2).toPlainString() + " %"
        : quote.matches("\\d{2,3}([.,]\\d+)?") ? quote + " %" : quote;
  }

  /** A single payout counts before the list. */
  void add(OwnListWishes.Quote quote) {
    metal(quote.metal())
        .ifPresent(
            metal ->
                payouts =
                    payouts.with(
                        metal, pieceClass(quote.pieceClass()), quote.payout().in(currency)));
  }

  /** A metal by code, symbol or name. */
  static Optional<Metal> metal(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    for (Metal metal : Metal.values()) {
      if (metal.word().equals(plain)) {
        return Optional.of(metal);
      }
    }
    return Metal.ofCode(plain);
  }

  /** {@code 90 %}, {@code .900} and {@code 900} are one class: the pieces of that fineness. */
  static String pieceClass(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    if (plain.matches("\\d{1,2}([.,]\\d)? ?%")) {
      return new java.math.BigDecimal(plain.replace(',', '.').replaceAll("[ %]", ""))
          .movePointRight(1)
          .stripTrailingZeros()
          .toPlainString();
    }
    if (plain.matches("0?\\.\\d{2,4}")) {
      return new java.math.BigDecimal(plain).movePointRight(3).stripTrailingZeros().toPlainString();
    }
    return plain;
  }
}
