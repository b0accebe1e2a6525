package fineweight.refresh.collection;

import fineweight.money.WantedGain;
import fineweight.sale.FeeSchedule;
import java.util.Objects;

/**
 * Where the collector sells and what a sale must earn. Immutable.
 *
 * @param fees of that place
 * @param wanted what is to be left beyond the cost
 */
public record SellingTerms(FeeSchedule fees, WantedGain wanted) {
  public SellingTerms {
    Objects.requireNonNull(fees, "fees");
    Objects.requireNonNull(wanted, "wanted");
  }
}
