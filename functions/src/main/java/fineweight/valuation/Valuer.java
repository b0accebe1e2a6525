package fineweight.valuation;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.quantity.Mass;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * Works out what pieces are worth. The order: the collector's own price; else the higher of metal x
 * payout and face value where the piece is still money. A damaged piece takes no price from a list.
 * Immutable.
 */
public final class Valuer {
  private final SpotPrices spots;
  private final Payouts payouts;
  private final DamageRule damageRule;

  public Valuer(SpotPrices spots, Payouts payouts, DamageRule damageRule) {
    this.spots = Objects.requireNonNull(spots, "spots");
    this.payouts = Objects.requireNonNull(payouts, "payouts");
    this.damageRule = Objects.requireNonNull(damageRule, "damageRule");
  }

  /** Full melt, and damage lowers to metal. */
  public Valuer(SpotPrices spots) {
    this(spots, Payouts.atMelt(), DamageRule.LOWERS_TO_METAL);
  }

  public SpotPrices spots() {
    return spots;
  }

  /** The same rules at other prices. */
  public Valuer at(SpotPrices otherSpots) {
    return new Valuer(otherSpots, payouts, damageRule);
  }

  /**
   * Values a row of pieces.
   *
   * @throws IllegalArgumentException if a price, a face value or a payout is in another currency
   *     than the spot prices; convert it first
   */
  public Valuation value(Piece piece) {
    FineContent content = piece.content();
    List<WorthCurve.Term> terms = terms(piece, content);
    Optional<OwnPrice> own = usedOwnPrice(piece);
    WorthCurve curve =
        own.isPresent()
            ? new WorthCurve(times(own.get().each(), piece, "the own price"), List.of())
            : new WorthCurve(
                piece
                    .face()
                    .map(face -> times(face, piece, "the face value"))
                    .orElse(BigDecimal.ZERO),
                terms);
    Worth worth = own.isPresent() ? ownWorth(own.get(), curve) : metalOrFace(piece, curve);
    return new Valuation(
        piece, content, spots.melt(content), worth, curve, spots.missingFor(content));
  }

  private Optional<OwnPrice> usedOwnPrice(Piece piece) {
    return piece.ownPrice().filter(price -> !isBarred(piece, price));
  }

  private boolean isBarred(Piece piece, OwnPrice price) {
    return piece.condition().damaged()
        && price.basis() == Basis.OWN_PRICE
        && damageRule == DamageRule.LOWERS_TO_METAL;
  }

  private BigDecimal times(BigMoney each, Piece piece, String name) {
    Amounts.requireSame(spots.currency(), each, name);
    return each.getAmount().multiply(BigDecimal.valueOf(piece.count()));
  }

  private List<WorthCurve.Term> terms(Piece piece, FineContent content) {
    List<WorthCurve.Term> terms = new ArrayList<>();
    for (Map.Entry<Metal, Mass> entry : content.masses().entrySet()) {
      Metal metal = entry.getKey();
      Optional<SpotPrice> spot = spots.of(metal);
      if (spot.isPresent()) {
        BigMoney melt = spot.get().valueOf(entry.getValue());
        Payout payout = payouts.of(metal, piece.payoutClass());
        payout.requireCurrencyOf(melt);
        terms.add(
            new WorthCurve.Term(
                metal,
                melt.getAmount().multiply(payout.share()),
                payout.added(content.troyOunces(metal), piece.count())));
      }
    }
    return terms;
  }

  private Worth ownWorth(OwnPrice price, WorthCurve curve) {
    String origin = price.origin().isEmpty() ? "" : " (" + price.origin() + ")";
    return new Worth(
        money(curve.floor()),
        price.basis(),
        price.basis().words() + ": " + Amounts.words(price.each()) + " each" + origin);
  }

  private Worth metalOrFace(Piece piece, WorthCurve curve) {
    BigMoney metal = money(curve.metalAt(BigDecimal.ONE, Set.of()));
    BigMoney face = money(curve.floor());
    String note = damageNote(piece) + unpricedNote(piece);
    if (face.isPositive() && !metal.isGreaterThan(face)) {
      String metalWords = metal.isZero() ? "" : ", its metal would bring " + Amounts.words(metal);
      return new Worth(face, Basis.FACE, "face value " + Amounts.words(face) + metalWords + note);
    }
    if (curve.terms().isEmpty()) {
      return new Worth(metal, Basis.NONE, "no price and no priced metal" + note);
    }
    String faceWords = face.isZero() ? "" : ", above its face value of " + Amounts.words(face);
    return new Worth(
        metal,
        Basis.METAL,
        "metal " + Amounts.words(metal) + " at " + payoutWords(piece, curve) + faceWords + note);
  }

  private String payoutWords(Piece piece, WorthCurve curve) {
    StringJoiner words = new StringJoiner(" and ");
    for (WorthCurve.Term term : curve.terms()) {
      String payout = payouts.of(term.metal(), piece.payoutClass()).words();
      words.add(curve.terms().size() == 1 ? payout : payout + " for " + term.metal().word());
    }
    return words.toString();
  }

  private String damageNote(Piece piece) {
    // An own price that is not used can only be one that the damage bars.
    return piece.ownPrice().isPresent() ? "; damaged, so the listed price does not count" : "";
  }

  private String unpricedNote(Piece piece) {
    StringJoiner names = new StringJoiner(" and ", "; no price given for ", ", not counted");
    names.setEmptyValue("");
    spots.missingFor(piece.content()).forEach(metal -> names.add(metal.word()));
    return names.toString();
  }

  private BigMoney money(BigDecimal amount) {
    CurrencyUnit currency = spots.currency();
    return Amounts.normal(BigMoney.of(currency, amount));
  }
}
