package fineweight.refresh;

import fineweight.column.CalculatedColumn;
import fineweight.refresh.collection.ForSale;
import fineweight.refresh.collection.TypeSetReview;
import fineweight.workbook.CellContent;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.joda.money.Money;

/** The columns that only some inventories have. */
final class FurtherColumns {
  private final Reckoning reckoning;

  FurtherColumns(Reckoning reckoning) {
    this.reckoning = reckoning;
  }

  /** What stands in each, by row from 0. */
  Map<CalculatedColumn, IntFunction<CellContent>> all() {
    Map<CalculatedColumn, IntFunction<CellContent>> all = new EnumMap<>(CalculatedColumn.class);
    boolean hasShares = reckoning.inventory().ours().containsKey(CalculatedColumn.COST_SHARE);
    if (hasShares || reckoning.lots().haveCostToShare()) {
      all.put(CalculatedColumn.COST_SHARE, row -> money(reckoning.lots().share(row)));
    }
    reckoning.set().ifPresent(set -> all.put(CalculatedColumn.TYPE_SET, row -> standing(set, row)));
    if (reckoning.further().selling().isPresent()) {
      all.put(CalculatedColumn.LEAST_PRICE, row -> money(least(row)));
    }
    return all;
  }

  private Optional<Money> least(int row) {
    return reckoning
        .forSale()
        .of(row)
        .flatMap(ForSale.Offer::least)
        .map(least -> least.proceeds().price());
  }

  private static CellContent money(Optional<Money> amount) {
    return amount.isPresent()
        ? new CellContent.Number(amount.get().getAmount())
        : CellContent.EMPTY;
  }

  private static CellContent standing(TypeSetReview set, int row) {
    Optional<String> words = set.standing(row).map(TypeSetReview::words);
    return words.isPresent() ? new CellContent.Text(words.get()) : CellContent.EMPTY;
  }
}
