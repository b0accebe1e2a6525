package fineweight.refresh.worth;

import fineweight.column.Appraisal;
import fineweight.column.RowState;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.refresh.inventory.ReadRow;
import fineweight.standard.CoinStandard;
import fineweight.valuation.Basis;
import fineweight.valuation.OwnPrice;
import fineweight.valuation.Piece;
import fineweight.valuation.Valuer;
import fineweight.valuation.Wear;
import fineweight.valuation.Worth;
import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * What the pieces of a row are worth: the collector's own price, or the higher of metal and face
 * value.
 */
public final class Worths {
  private final Spot spot;
  private final Valuer valuer;
  private final Wear wear;

  public Worths(Spot spot) {
    this.spot = spot;
    this.valuer = new Valuer(spot.prices());
    this.wear =
        spot.wear().signum() == 0
            ? Wear.none()
            : new Wear.Percentage(spot.wear().movePointRight(2));
  }

  /**
   * Empty where nothing can be said: an unknown piece without a price of its owner's, or a metal
   * without a price.
   */
  public Optional<Worth> of(ReadRow row) {
    Appraisal appraisal = row.appraisal();
    if (appraisal.pieces().isEmpty() || appraisal.pieces().get() > Integer.MAX_VALUE) {
      return Optional.empty();
    }
    CurrencyUnit currency = spot.prices().currency();
    Piece piece =
        Piece.of(appraisal.figures().content())
            .times(appraisal.pieces().get().intValue())
            .worn(wear);
    Optional<BigDecimal> face = faceEach(appraisal);
    if (face.isPresent()) {
      piece = piece.withFace(BigMoney.of(currency, face.get()));
    }
    if (row.money().ownPrice().isPresent()) {
      piece = piece.priced(OwnPrice.stated(BigMoney.of(currency, row.money().ownPrice().get())));
    } else if (appraisal.state() == RowState.NOT_KNOWN
        || !spot.prices().missingFor(appraisal.content()).isEmpty()) {
      return Optional.empty();
    }
    Worth worth = valuer.value(piece).worth();
    return worth.basis() == Basis.NONE ? Optional.empty() : Optional.of(worth);
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
        .filter(issue -> spot.prices().currency().getCode().equals("USD"))
        .flatMap(issue -> issue.faceValue());
  }
}
