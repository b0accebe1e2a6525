package fineweight.refresh.collection;

import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.worth.Lots;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** The pieces that are still in the collection, those for sale apart from those that are kept. */
public final class LabelPieces {
  private final ForSale forSale;
  private final Lots lots;
  private final PieceNumbers numbers;
  private final Optional<SellingTerms> terms;

  public LabelPieces(
      ForSale forSale, Lots lots, PieceNumbers numbers, Optional<SellingTerms> terms) {
    this.forSale = forSale;
    this.lots = lots;
    this.numbers = numbers;
    this.terms = terms;
  }

  /**
   * @param held the rows with the pieces that are still in the collection
   * @param apart whether a row of which a part is for sale comes twice
   * @return in the order of the sheet
   */
  public List<LabelPiece> of(List<ReadRow> held, boolean apart) {
    return apart
        ? apart(held)
        : held.stream()
            .map(
                row ->
                    new LabelPiece(
                        row,
                        numbers.of(row.row()),
                        forSale.of(row.row()).isPresent(),
                        LabelPiece.Least.NONE))
            .toList();
  }

  private List<LabelPiece> apart(List<ReadRow> held) {
    List<LabelPiece> pieces = new ArrayList<>();
    for (ReadRow row : held) {
      String number = numbers.of(row.row());
      long all = row.appraisal().pieces().orElse(1L);
      Optional<ForSale.Offer> offer = forSale.of(row.row());
      long offered = offer.map(part -> part.row().appraisal().pieces().orElse(1L)).orElse(0L);
      offer.ifPresent(
          part -> pieces.add(new LabelPiece(part.row(), number, true, least(part, row))));
      if (offered < all) {
        ReadRow kept = offered == 0 ? row : row.withPieces(all - offered);
        pieces.add(new LabelPiece(kept, number, false, LabelPiece.Least.NONE));
      }
    }
    return pieces;
  }

  private LabelPiece.Least least(ForSale.Offer offer, ReadRow held) {
    Optional<Money> one = lots.share(held.row()).map(share -> ForSale.part(share, 1, held));
    return new LabelPiece.Least(
        offer.least().map(least -> least.proceeds().price()),
        terms.flatMap(
            selling ->
                one.flatMap(cost -> selling.fees().leastPrice(cost, selling.wanted()))
                    .map(least -> least.proceeds().price())));
  }
}
