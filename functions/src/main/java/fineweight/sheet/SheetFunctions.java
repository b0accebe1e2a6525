package fineweight.sheet;

import fineweight.sheet.coin.CoinFunctions;
import fineweight.sheet.coin.FineFunctions;
import fineweight.sheet.function.SheetFunction;
import fineweight.sheet.measure.MeasureFunctions;
import fineweight.sheet.sale.SaleFunctions;
import fineweight.sheet.sale.SetFunctions;
import fineweight.sheet.worth.LotFunctions;
import fineweight.sheet.worth.WorthFunctions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All functions. */
public final class SheetFunctions {
  private static final List<SheetFunction> ALL =
      Stream.of(
              CoinFunctions.all(),
              FineFunctions.all(),
              WorthFunctions.all(),
              LotFunctions.all(),
              SaleFunctions.all(),
              SetFunctions.all(),
              MeasureFunctions.all())
          .flatMap(List::stream)
          .toList();

  private static final Map<String, SheetFunction> BY_NAME =
      new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

  static {
    for (SheetFunction function : ALL) {
      BY_NAME.put(function.name(), function);
    }
  }

  private SheetFunctions() {}

  /** In the order of the reference. */
  public static List<SheetFunction> all() {
    return ALL;
  }

  /** By the name in a cell, in capitals or not. */
  public static Optional<SheetFunction> named(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  /**
   * By the second part of its name.
   *
   * @throws IllegalArgumentException if there is no such function
   */
  public static SheetFunction ofMethod(String method) {
    return named(SheetFunction.PREFIX + "." + method)
        .orElseThrow(() -> new IllegalArgumentException("no function " + method));
  }
}
