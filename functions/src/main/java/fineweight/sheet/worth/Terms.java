package fineweight.sheet.worth;

import fineweight.column.RowState;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.sheet.coin.Coin;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.UnusableArgument;
import fineweight.spot.SpotPrices;
import fineweight.valuation.DamageRule;
import fineweight.valuation.OwnPrice;
import fineweight.valuation.Payout;
import fineweight.valuation.Payouts;
import fineweight.valuation.Piece;
import fineweight.valuation.Valuation;
import fineweight.valuation.Valuer;
import fineweight.valuation.Wear;
import fineweight.valuation.WorthRange;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;

/**
 * On what terms coins are valued: wear, payout and what the collector knows of the piece.
 *
 * @param wear the share of the metal that use has taken
 * @param payout what a buyer pays of melt
 * @param face the face value of one piece, where it is still money
 * @param ownPrice the collector's own price of one piece
 */
record Terms(Wear wear, Payout payout, Optional<BigDecimal> face, Optional<BigDecimal> ownPrice) {
  static final Parameter WEAR =
      Parameter.optional(
          "wear", "share, 2% or 0.02", "How much of the metal use has taken; nothing if left out");

  static final Parameter PAYOUT =
      Parameter.optional(
          "payout", "share, 95% or 0.95", "What a buyer pays of melt; all of it if left out");

  private static final BigDecimal ONE_TIME = BigDecimal.ONE;
  private static final BigDecimal FIVE_TIMES = new BigDecimal("5");

  /**
   * @throws fineweight.sheet.function.UnusableArgument if an argument is out of range
   */
  static Terms of(Given given) {
    return new Terms(
        new Wear.Percentage(given.percent("wear", BigDecimal.ZERO, ONE_TIME)),
        payout(given),
        amount(given, "face"),
        amount(given, "own price"));
  }

  /** A blank cell is handed over as zero, and nothing must not be paid by a slip. */
  private static Payout payout(Given given) {
    BigDecimal percent = given.percent("payout", BigDecimal.ONE, FIVE_TIMES);
    if (percent.signum() == 0) {
      throw new UnusableArgument("payout", "expected a share above 0%; leave it out for all of it");
    }
    return new Payout.PercentOfMelt(percent);
  }

  /** An amount of more than zero, because a blank cell is handed over as zero. */
  private static Optional<BigDecimal> amount(Given given, String name) {
    return given.has(name)
        ? Optional.of(given.notNegative(name, BigDecimal.ZERO)).filter(it -> it.signum() > 0)
        : Optional.empty();
  }

  /** The valuer for these terms. */
  Valuer valuer(SpotPrices spots) {
    Payouts payouts = Payouts.atMelt();
    for (Metal metal : Metal.values()) {
      payouts = payouts.with(metal, payout);
    }
    return new Valuer(spots, payouts, DamageRule.LOWERS_TO_METAL);
  }

  /**
   * The lowest and the highest that a coin may be worth; empty if the coin or the count is not
   * known.
   */
  Optional<WorthRange> value(Coin coin, SpotPrices spots) {
    if (coin.pieces().isEmpty() || coin.state() == RowState.NOT_KNOWN) {
      return Optional.empty();
    }
    List<FineContent> contents =
        coin.possible().isEmpty() ? List.of(FineContent.NONE) : coin.contents();
    int pieces = Math.toIntExact(coin.pieces().get());
    Valuer valuer = valuer(spots);
    List<Valuation> valuations = new ArrayList<>();
    for (FineContent content : contents) {
      valuations.add(valuer.value(piece(content, pieces)));
    }
    return Optional.of(WorthRange.among(valuations));
  }

  private Piece piece(FineContent content, int pieces) {
    Piece piece = Piece.of(content).times(pieces).worn(wear);
    if (face.isPresent()) {
      piece = piece.withFace(money(face.get()));
    }
    return ownPrice.isPresent() ? piece.priced(OwnPrice.stated(money(ownPrice.get()))) : piece;
  }

  private static BigMoney money(BigDecimal amount) {
    return BigMoney.of(SpotArgument.TWO_PLACES, amount);
  }
}
