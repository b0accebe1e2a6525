package fineweight.refresh.worth;

import fineweight.column.Appraisal;
import fineweight.column.MeltFormula;
import fineweight.column.RowState;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.metal.FineContent;
import fineweight.refresh.inventory.ReadRow;
import fineweight.standard.CoinStandard;
import fineweight.valuation.Basis;
import fineweight.valuation.OwnPrice;
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
  private final Valuer valuer;
  private final Wear wear;
  private final Map<Appraisal, Optional<Valuation>> remembered = new IdentityHashMap<>();

  public Worths(Spot spot) {
    this.spot = spot;
    this.melt = new MeltFormula(spot.prices(), spot.wear());
    this.valuer = new Valuer(spot.prices());
    this.wear =
        spot.wear().signum() == 0
            ? Wear.none()
            : new Wear.Percentage(spot.wear().movePointRight(2));
  }

  public Spot spot() {
    return spot;
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
    return low(row).map(Valuation::worth);
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
    if (row.money().ownPrice().isPresent()) {
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
    if (uncounted || (unpriced && row.money().ownPrice().isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(valuer.value(piece(row, each)))
        .filter(valuation -> valuation.worth().basis() != Basis.NONE);
  }

  private Piece piece(ReadRow row, FineContent each) {
    long count = row.appraisal().pieces().orElse(1L);
    Piece piece = Piece.of(each).times((int) Math.max(1, Math.min(count, Integer.MAX_VALUE)));
    if (each.masses().isEmpty() && row.appraisal().state() == RowState.NOT_KNOWN) {
      return priced(piece, row);
    }
    Optional<BigDecimal> face = faceEach(row.appraisal());
    Piece worn = piece.worn(wear);
    return priced(
        face.isPresent() ? worn.withFace(BigMoney.of(currency(), face.get())) : worn, row);
  }

  private Piece priced(Piece piece, ReadRow row) {
    Optional<BigDecimal> own = row.money().ownPrice();
    return own.isPresent()
        ? piece.priced(OwnPrice.stated(BigMoney.of(currency(), own.get())))
        : piece;
  }

  /**
   * Face value of all pieces of the row; empty if they are no money in the currency of the prices.
   */
  public Optional<BigDecimal> face(ReadRow row) {
    return faceEach(row.appraisal())
        .flatMap(each -> row.appraisal().pieces().map(BigDecimal::valueOf).map(each::multiply));
  }

  /** Coins of the United States of every date are still money (31 U.S.C. 5103). */
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
        .filter(issue -> issue.country().equals("US"))
        .filter(issue -> currency().getCode().equals("USD"))
        .flatMap(issue -> issue.faceValue());
  }
}
