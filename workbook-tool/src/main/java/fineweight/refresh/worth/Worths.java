package fineweight.refresh.worth;

import fineweight.column.Appraisal;
import fineweight.column.MeltFormula;
import fineweight.column.RowState;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.price.ExchangeRates;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RowCondition;
import fineweight.refresh.own.OwnTerms;
import fineweight.standard.CoinStandard;
import fineweight.standard.Issue;
import fineweight.valuation.Basis;
import fineweight.valuation.DamageRule;
import fineweight.valuation.OwnPrice;
import fineweight.valuation.Payout;
import fineweight.valuation.Piece;
import fineweight.valuation.Valuation;
import fineweight.valuation.Valuer;
import fineweight.valuation.Wear;
import fineweight.valuation.Worth;
import fineweight.valuation.WorthRange;
import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * What the pieces of a row are worth: the collector's own price, or the higher of metal and face
 * value. Remembers what it worked out, because rows with the same words share one appraisal.
 */
public final class Worths {
  private static final int MOST_REMEMBERED = 50_000;

  private final Spot spot;
  private final MeltFormula melt;
  private final OwnTerms own;
  private final Valuer valuer;
  private final Wear wear;
  private final Map<Appraisal, Optional<Valuation>> remembered = new IdentityHashMap<>();

  /** Everything at full melt, and no list of the collector's. */
  public Worths(Spot spot) {
    this(spot, OwnTerms.none(spot.prices().currency(), spot.prices().date()));
  }

  public Worths(Spot spot, OwnTerms own) {
    this.spot = spot;
    this.own = own;
    this.melt = new MeltFormula(spot.prices(), spot.wear());
    this.valuer = new Valuer(spot.prices(), own.payouts(), DamageRule.LOWERS_TO_METAL);
    this.wear =
        spot.wear().signum() == 0
            ? Wear.none()
            : new Wear.Percentage(spot.wear().movePointRight(2));
  }

  public Spot spot() {
    return spot;
  }

  /** What the collector's own lists say. */
  public OwnTerms own() {
    return own;
  }

  public MeltFormula melt() {
    return melt;
  }

  /** The currency of every figure. */
  public CurrencyUnit currency() {
    return spot.prices().currency();
  }

  /**
   * Empty where nothing can be said: an unknown piece without a price of its owner's, or a metal
   * without a price.
   */
  public Optional<Worth> of(ReadRow row) {
    return low(row).map(valuation -> explained(row, valuation.worth()));
  }

  /** The worth with what the collector's own lists lack for it. */
  private Worth explained(ReadRow row, Worth worth) {
    String more = new OwnPriceOf(own, currency()).missing(row);
    return more.isEmpty()
        ? worth
        : new Worth(worth.money(), worth.basis(), worth.sentence() + "; " + more);
  }

  /** The formula of what a buyer pays for the row's metals; empty where he pays full melt. */
  public Optional<String> paidFormula(ReadRow row, Map<Metal, String> cells) {
    FineContent content = row.appraisal().content();
    String pieceClass = pieceClass(row);
    boolean atMelt =
        content.masses().keySet().stream()
            .filter(metal -> spot.prices().of(metal).isPresent())
            .allMatch(metal -> own.payouts().of(metal, pieceClass).equals(Payout.full()));
    int pieces = (int) Math.min(row.appraisal().pieces().orElse(1L), Integer.MAX_VALUE);
    return atMelt
        ? Optional.empty()
        : Optional.of(
            melt.paidOfCells(content, cells, metal -> own.payouts().of(metal, pieceClass), pieces));
  }

  /** The collector's class for the row, else its fineness where his payouts know that. */
  private String pieceClass(ReadRow row) {
    String said = OwnTerms.pieceClass(row.money().payoutClass());
    if (!said.isEmpty()) {
      return said;
    }
    return row.appraisal()
        .figures()
        .fineness()
        .map(fineness -> fineness.perMille().stripTrailingZeros().toPlainString())
        .filter(own.payouts()::knows)
        .orElse("");
  }

  /** The worth with the lowest and the highest figure of what the row leaves open. */
  public WorthRange range(ReadRow row) {
    Valuation low = low(row).orElseGet(() -> valuer.value(piece(row, FineContent.NONE)));
    RowState state = row.appraisal().state();
    if (state != RowState.SEVERAL) {
      return new WorthRange(low, low, state == RowState.NOT_KNOWN);
    }
    Valuation high = value(row, row.appraisal().most()).orElse(low);
    boolean higher = high.worth().money().isGreaterThan(low.worth().money());
    return new WorthRange(low, higher ? high : low, true);
  }

  private Optional<Valuation> low(ReadRow row) {
    Appraisal appraisal = row.appraisal();
    if (row.money().ownPrice().isPresent() || !row.money().payoutClass().isEmpty()) {
      return value(row, appraisal.figures().content());
    }
    Optional<Valuation> known = remembered.get(appraisal);
    if (known == null) {
      known = value(row, appraisal.figures().content());
      if (remembered.size() < MOST_REMEMBERED) {
        remembered.put(appraisal, known);
      }
    }
    return known;
  }

  private Optional<Valuation> value(ReadRow row, FineContent each) {
    Appraisal appraisal = row.appraisal();
    boolean uncounted =
        appraisal.pieces().isEmpty() || appraisal.pieces().get() > Integer.MAX_VALUE;
    boolean unpriced =
        appraisal.state() == RowState.NOT_KNOWN || !spot.prices().missingFor(each).isEmpty();
    if (uncounted || (unpriced && price(row).isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(valuer.value(piece(row, each)))
        .filter(valuation -> valuation.worth().basis() != Basis.NONE);
  }

  private Piece piece(ReadRow row, FineContent each) {
    long count = row.appraisal().pieces().orElse(1L);
    Piece piece =
        Piece.of(each)
            .times((int) Math.max(1, Math.min(count, Integer.MAX_VALUE)))
            .inClass(pieceClass(row))
            .in(RowCondition.of(row.appraisal().clues().condition()));
    if (each.masses().isEmpty() && row.appraisal().state() == RowState.NOT_KNOWN) {
      return priced(piece, row);
    }
    Optional<BigDecimal> face = faceEach(row.appraisal());
    Piece worn = piece.worn(wear);
    return priced(
        face.isPresent() ? worn.withFace(BigMoney.of(currency(), face.get())) : worn, row);
  }

  private Piece priced(Piece piece, ReadRow row) {
    Optional<OwnPrice> price = price(row);
    return price.isPresent() ? piece.priced(price.get()) : piece;
  }

  private Optional<OwnPrice> price(ReadRow row) {
    return new OwnPriceOf(own, currency()).price(row);
  }

  /**
   * Face value of all pieces of the row; empty if they are no money in the currency of the prices.
   */
  public Optional<BigDecimal> face(ReadRow row) {
    return faceEach(row.appraisal())
        .flatMap(each -> row.appraisal().pieces().map(BigDecimal::valueOf).map(each::multiply));
  }

  /**
   * Coins of the United States of every date are still money (31 U.S.C. 5103), and coins in euro
   * are (Council Regulation (EC) No 974/98, article 11). Of others it is not known here.
   */
  private Optional<BigDecimal> faceEach(Appraisal appraisal) {
    Optional<CoinStandard> standard = Optional.empty();
    if (appraisal.identification() instanceof OneStandard one) {
      standard = Optional.of(one.standard());
    } else if (appraisal.identification() instanceof SeveralStandards several) {
      standard =
          several.candidates().stream()
              .map(candidate -> candidate.standard())
              .filter(candidate -> candidate.id().equals(appraisal.figures().standardId()))
              .findFirst();
    }
    return standard
        .map(CoinStandard::issue)
        .filter(Worths::isMoney)
        .flatMap(issue -> issue.faceValue().flatMap(face -> converted(face, issue.currency())));
  }

  private static boolean isMoney(Issue issue) {
    boolean euro = issue.currency().equals("EUR") && issue.years().first() >= 1999;
    return euro || (issue.country().equals("US") && issue.currency().equals("USD"));
  }

  private Optional<BigDecimal> converted(BigDecimal face, String code) {
    return ExchangeRates.currency(code)
        .flatMap(unit -> own.rates().convert(BigMoney.of(unit, face), currency()))
        .map(BigMoney::getAmount);
  }
}
