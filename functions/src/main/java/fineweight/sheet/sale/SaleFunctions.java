package fineweight.sheet.sale;

import fineweight.money.Amounts;
import fineweight.money.WantedGain;
import fineweight.sale.Commission;
import fineweight.sale.FeeSchedule;
import fineweight.sale.Handling;
import fineweight.sale.LeastPrice;
import fineweight.sale.Payment;
import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Given;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;
import fineweight.sheet.function.SheetFunction.Texts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Functions about selling. */
public final class SaleFunctions {
  /** Cells have numbers, not money: any currency of two places does, and it is never shown. */
  private static final CurrencyUnit TWO_PLACES = CurrencyUnit.USD;

  private static final List<Parameter> FEES =
      List.of(
          Parameter.optional(
              "commission",
              "share, 12% or 0.12",
              "What the place of sale takes of the price; or tiers in per cent as 12.5 up to 1000;"
                  + " 9"),
          Parameter.optional("fixed", "money", "What each sale costs beside it"),
          Parameter.optional(
              "payment share", "share, 3% or 0.03", "What the payment takes of price and postage"),
          Parameter.optional("payment fixed", "money", "What each payment costs beside it"),
          Parameter.optional("postage in", "money", "The postage that the buyer pays"),
          Parameter.optional("postage out", "money", "The postage and packing that you pay"));

  private SaleFunctions() {}

  /** The functions in the order of the reference. */
  public static List<SheetFunction> all() {
    return List.of(
        new SheetFunction(
            "netProceeds",
            with(Parameter.needed("price", "money", "What the buyer pays for the piece"), FEES),
            new Texts(
                "What is left of a price after fees, payment, postage and packing.",
                "FINEWEIGHT.NETPROCEEDS(100; 12%; 0.30; 3%)",
                "money, each fee rounded half up to two places; negative where fees exceed the"
                    + " price",
                "a text where an argument is out of range"),
            SaleFunctions::net),
        new SheetFunction(
            "leastPrice",
            with(
                Parameter.needed("cost", "money", "What the piece cost you"),
                with(
                    Parameter.optional(
                        "margin",
                        "share, 20% or 0.2",
                        "The gain you want, as a share of the price"),
                    FEES)),
            new Texts(
                "The lowest price that earns a margin after all fees.",
                "FINEWEIGHT.LEASTPRICE(100; 20%; 12%; 0.30; 3%)",
                "money, exact to the cent",
                "a text where no price earns it"),
            SaleFunctions::least));
  }

  private static List<Parameter> with(Parameter first, List<Parameter> others) {
    List<Parameter> parameters = new ArrayList<>(List.of(first));
    parameters.addAll(others);
    return parameters;
  }

  private static Outcome net(Given given) {
    if (given.words("price").isEmpty()) {
      return Outcome.BLANK;
    }
    return Outcome.number(schedule(given).net(money(given, "price")).getAmount());
  }

  private static Outcome least(Given given) {
    if (given.words("cost").isEmpty()) {
      return Outcome.BLANK;
    }
    WantedGain wanted =
        new WantedGain.Margin(given.percent("margin", BigDecimal.ZERO, BigDecimal.ONE));
    Optional<LeastPrice> least = schedule(given).leastPrice(money(given, "cost"), wanted);
    return least
        .map(found -> Outcome.number(found.proceeds().price().getAmount()))
        .orElse(Outcome.text("no price earns this: fees and margin take all of it"));
  }

  private static FeeSchedule schedule(Given given) {
    Money none = Money.zero(TWO_PLACES);
    return new FeeSchedule(
        "cell",
        commission(given),
        money(given, "fixed"),
        new Payment(
            given.percent("payment share", BigDecimal.ZERO, BigDecimal.ONE),
            money(given, "payment fixed")),
        new Handling(money(given, "postage in"), money(given, "postage out"), none));
  }

  private static Commission commission(Given given) {
    Argument argument = given.at("commission");
    if (argument instanceof Argument.Text text && text.value().matches(".*(up to|;).*")) {
      return new Commission(
          Commission.parseTiers(text.value(), TWO_PLACES),
          Commission.Rule.EACH_PART,
          Optional.empty(),
          false);
    }
    return Commission.flat(given.percent("commission", BigDecimal.ZERO, BigDecimal.ONE));
  }

  private static Money money(Given given, String name) {
    return Amounts.atCell(BigMoney.of(TWO_PLACES, given.notNegative(name, BigDecimal.ZERO)));
  }
}
