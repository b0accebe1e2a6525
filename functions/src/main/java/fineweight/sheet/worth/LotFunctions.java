package fineweight.sheet.worth;

import fineweight.lot.BreakEven;
import fineweight.lot.CostShares;
import fineweight.lot.LotTotals;
import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.sheet.coin.Coin;
import fineweight.sheet.coin.Coins;
import fineweight.sheet.coin.FineFunctions;
import fineweight.sheet.coin.MetalArgument;
import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;
import fineweight.sheet.function.SheetFunction.Texts;
import fineweight.sheet.function.UnusableArgument;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.valuation.WorthCurve;
import fineweight.valuation.WorthRange;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** Functions about the rows of a lot. */
public final class LotFunctions {
  private static final Parameter COST =
      Parameter.needed("cost", "money", "What the whole lot cost, all fees and postage included");

  private static final List<Parameter> OF_ROWS =
      List.of(
          FineFunctions.COINS,
          SpotArgument.SPOT,
          FineFunctions.PIECES_OF_ROWS,
          Terms.WEAR,
          Terms.PAYOUT);

  private LotFunctions() {}

  /** The functions in the order of the reference. */
  public static List<SheetFunction> all() {
    return List.of(lotTotal(), lotRange(), costShares(), breakEven());
  }

  private static SheetFunction lotTotal() {
    return new SheetFunction(
        "lotTotal",
        OF_ROWS,
        new Texts(
            "The metal of all rows of a lot at spot.",
            "FINEWEIGHT.LOTTOTAL(A2:A40; \"XAU=2500; XAG=30\"; B2:B40)",
            "money: the sum of the rounded rows, the lowest of every open row",
            "rows that are not known count nothing: see FINEWEIGHT.LOTRANGE"),
        given -> lot(given).map(Lot::total).orElse(Outcome.BLANK));
  }

  private static SheetFunction lotRange() {
    return new SheetFunction(
        "lotRange",
        OF_ROWS,
        new Texts(
            "The same total in words, with what is open.",
            "FINEWEIGHT.LOTRANGE(A2:A40; \"XAU=2500; XAG=30\"; B2:B40)",
            "one figure, or at least, at most, and how many rows are open or not known",
            "a text where a price is missing"),
        given -> lot(given).map(Lot::words).orElse(Outcome.BLANK));
  }

  private static SheetFunction costShares() {
    return new SheetFunction(
        "costShares",
        List.of(
            COST,
            Parameter.needed("worths", "money", "A column with the worth of each row"),
            Parameter.optional(
                "pieces", "", "A column with the pieces of each row, for a lot without worth")),
        new Texts(
            "The cost of a lot shared over its rows by relative worth, by one matrix formula.",
            "FINEWEIGHT.COSTSHARES(500; D2:D40)",
            "a column of money that adds up to the cost exactly; equal shares by piece where no"
                + " row has a worth",
            "a text where a worth or the cost is negative or no number"),
        LotFunctions::shares);
  }

  private static SheetFunction breakEven() {
    return new SheetFunction(
        "breakEven",
        List.of(
            COST,
            FineFunctions.COINS,
            MetalArgument.METAL,
            FineFunctions.PIECES_OF_ROWS,
            Terms.WEAR,
            Terms.PAYOUT,
            Parameter.optional(
                "others", "money", "The prices of other metals in the lot, as XAU=2500")),
        new Texts(
            "The spot price of one metal at which a lot is worth what it cost.",
            "FINEWEIGHT.BREAKEVEN(500; A2:A40; \"silver\"; B2:B40; 2%; 90%)",
            "money for one troy ounce, with the lowest of every open row",
            "a text where no price, or any price, makes the lot worth its cost"),
        LotFunctions::breakEven);
  }

  /** The rows that are known, and how many are not. */
  private record Lot(List<WorthRange> rows, int notKnown) {
    LotTotals totals() {
      Money none = Money.zero(SpotArgument.TWO_PLACES);
      return LotTotals.of(
          SpotArgument.TWO_PLACES,
          rows.stream().map(range -> new LotTotals.Row(range, none, true)).toList());
    }

    Outcome total() {
      return Outcome.number(totals().least().worth().getAmount());
    }

    Outcome words() {
      LotTotals totals = totals();
      String least = totals.least().worth().getAmount().toPlainString();
      String most = totals.most().worth().getAmount().toPlainString();
      String range =
          totals.openRows() == 0
              ? least
              : "at least " + least + ", at most " + most + ", " + totals.openRows() + " open";
      return Outcome.text(notKnown == 0 ? range : range + ", " + notKnown + " not known");
    }
  }

  private static Optional<Lot> lot(Given given) {
    List<Coin> coins = coins(given);
    return coins.isEmpty()
        ? Optional.empty()
        : Optional.of(lot(coins, Terms.of(given), SpotArgument.of(given, coins)));
  }

  private static Lot lot(List<Coin> coins, Terms terms, SpotPrices spots) {
    List<WorthRange> ranges = new ArrayList<>();
    coins.forEach(coin -> terms.value(coin, spots).ifPresent(ranges::add));
    return new Lot(ranges, coins.size() - ranges.size());
  }

  /** The coins of the rows that are not blank. */
  private static List<Coin> coins(Given given) {
    List<List<Argument>> rows = given.rows("coins");
    List<Argument> counts = FineFunctions.counts(given, rows.size());
    List<Coin> coins = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Optional<Argument> count = counts.isEmpty() ? Optional.empty() : Optional.of(counts.get(i));
      Coins.standard().of(rows.get(i), count).ifPresent(coins::add);
    }
    return coins;
  }

  private static Outcome shares(Given given) {
    List<BigMoney> worths = new ArrayList<>();
    for (Argument cell : given.cells("worths")) {
      BigDecimal worth = Given.number("worths", cell).orElse(BigDecimal.ZERO);
      if (worth.signum() < 0) {
        throw new UnusableArgument("worths", "a worth is zero or more, found " + worth);
      }
      worths.add(BigMoney.of(SpotArgument.TWO_PLACES, worth));
    }
    if (worths.isEmpty()) {
      return Outcome.BLANK;
    }
    CostShares shares = CostShares.byWorth(cost(given), worths, counts(given, worths.size()));
    return Outcome.column(
        shares.shares().stream().map(share -> Outcome.number(share.getAmount())).toList());
  }

  private static List<Integer> counts(Given given, int rows) {
    List<Argument> counts = FineFunctions.counts(given, rows);
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      BigDecimal count =
          counts.isEmpty()
              ? BigDecimal.ONE
              : Given.number("pieces", counts.get(i)).orElse(BigDecimal.ONE);
      boolean whole = count.stripTrailingZeros().scale() <= 0;
      if (!whole || count.signum() <= 0 || count.compareTo(new BigDecimal("1000000")) > 0) {
        throw new UnusableArgument(
            "pieces", "expected whole numbers from 1, found " + count.toPlainString());
      }
      numbers.add(count.intValueExact());
    }
    return numbers;
  }

  private static Money cost(Given given) {
    return Amounts.atCell(
        BigMoney.of(SpotArgument.TWO_PLACES, given.notNegative("cost", BigDecimal.ZERO)));
  }

  private static Outcome breakEven(Given given) {
    Metal metal = MetalArgument.of(given);
    Money cost = cost(given);
    List<Coin> coins = coins(given);
    if (coins.isEmpty()) {
      return Outcome.BLANK;
    }
    // The worth is a straight line in this metal's price, so any price will do to draw it.
    SpotPrice scale = SpotArgument.ounce(metal, BigDecimal.ONE);
    SpotPrices spots = SpotArgument.with(scale, given.words("others"));
    Lot lot = lot(coins, Terms.of(given), spots);
    List<WorthCurve> curves = lot.rows().stream().map(row -> row.low().curve()).toList();
    Optional<SpotPrice> answer = BreakEven.ofMetal(cost, curves, scale).spot();
    return answer
        .map(spot -> Outcome.number(spot.amount()))
        .orElseGet(() -> Outcome.text(noAnswer(cost, curves, metal)));
  }

  private static String noAnswer(Money cost, List<WorthCurve> curves, Metal metal) {
    Set<Metal> moving = EnumSet.of(metal);
    BigDecimal worth = BigDecimal.ZERO;
    for (WorthCurve curve : curves) {
      worth = worth.add(curve.at(BigDecimal.ZERO, moving));
    }
    return worth.compareTo(cost.getAmount()) >= 0
        ? "worth its cost at any price of " + metal.word()
        : "no price of " + metal.word() + " makes it worth its cost";
  }
}
