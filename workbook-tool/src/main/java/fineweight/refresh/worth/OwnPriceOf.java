package fineweight.refresh.worth;

import fineweight.clue.Dating;
import fineweight.grade.Condition;
import fineweight.identification.Identification.OneStandard;
import fineweight.money.Amounts;
import fineweight.price.ExchangeRates;
import fineweight.price.PriceAnswer;
import fineweight.price.PriceQuestion;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RowCondition;
import fineweight.refresh.inventory.RowMoney;
import fineweight.refresh.own.OwnTerms;
import fineweight.valuation.Basis;
import fineweight.valuation.OwnPrice;
import java.util.Optional;
import java.util.Set;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** The collector's own price of a row's pieces: the one beside them before the one of his list. */
final class OwnPriceOf {
  private final OwnTerms own;
  private final CurrencyUnit currency;

  OwnPriceOf(OwnTerms own, CurrencyUnit currency) {
    this.own = own;
    this.currency = currency;
  }

  Optional<OwnPrice> price(ReadRow row) {
    Optional<OwnPrice> stated = row.money().ownPrice().flatMap(this::stated);
    return stated.isPresent() ? stated : listed(row);
  }

  private Optional<OwnPrice> stated(RowMoney.Own written) {
    Optional<CurrencyUnit> unit = unit(written);
    if (unit.isEmpty()) {
      return Optional.empty();
    }
    BigMoney given = BigMoney.of(unit.get(), written.each());
    return own.rates()
        .convert(given, currency)
        .map(
            each ->
                unit.get().equals(currency)
                    ? OwnPrice.stated(each)
                    : new OwnPrice(
                        each,
                        Basis.STATED,
                        Amounts.words(given) + " at the rate of " + own.rates().date()));
  }

  private Optional<CurrencyUnit> unit(RowMoney.Own written) {
    return written.currency().isEmpty()
        ? Optional.of(currency)
        : ExchangeRates.currency(written.currency());
  }

  private Optional<OwnPrice> listed(ReadRow row) {
    return question(row)
        .map(own.prices()::price)
        .filter(PriceAnswer.Found.class::isInstance)
        .map(found -> ((PriceAnswer.Found) found).asOwnPrice());
  }

  /** A list is asked only for a piece whose standard and date are settled. */
  private Optional<PriceQuestion> question(ReadRow row) {
    boolean settled =
        !own.prices().isEmpty() && row.appraisal().identification() instanceof OneStandard;
    if (!settled) {
      return Optional.empty();
    }
    var clues = row.appraisal().clues();
    Dating dating = clues.dating();
    if (dating.kind() != Dating.Kind.YEARS || dating.years().size() != 1) {
      return Optional.empty();
    }
    Condition condition = RowCondition.of(clues.condition());
    String id = ((OneStandard) row.appraisal().identification()).standard().id();
    String mint = clues.mint().map(said -> said.value()).orElse("");
    return Optional.of(new PriceQuestion(Set.of(id), dating.years().get(0), mint, condition));
  }

  /** What keeps a price of the collector's from being used; empty if nothing does. */
  String missing(ReadRow row) {
    Optional<RowMoney.Own> written = row.money().ownPrice();
    if (written.isPresent() && written.flatMap(this::stated).isEmpty()) {
      return "your price in "
          + written.get().currency()
          + " does not count, because there is no rate for it";
    }
    if (written.isPresent()) {
      return "";
    }
    return question(row)
        .filter(own.prices()::hasTypeOf)
        .map(own.prices()::price)
        .filter(PriceAnswer.NotListed.class::isInstance)
        .map(PriceAnswer::sentence)
        .orElse("");
  }
}
