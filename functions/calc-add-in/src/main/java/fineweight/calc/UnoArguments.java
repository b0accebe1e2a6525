package fineweight.calc;

import com.sun.star.uno.Any;
import com.sun.star.uno.TypeClass;
import fineweight.sheet.function.Argument;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** From what the office hands over to arguments. */
final class UnoArguments {
  private UnoArguments() {}

  /** The arguments without those that were left out at the end. */
  static List<Argument> of(Object[] handed) {
    List<Argument> arguments = new ArrayList<>();
    Arrays.stream(handed).forEach(one -> arguments.add(argument(one)));
    while (!arguments.isEmpty() && arguments.get(arguments.size() - 1).equals(Argument.LEFT_OUT)) {
      arguments.remove(arguments.size() - 1);
    }
    return arguments;
  }

  private static Argument argument(Object handed) {
    if (handed instanceof Any any) {
      return any.getType().getTypeClass() == TypeClass.VOID
          ? Argument.LEFT_OUT
          : argument(any.getObject());
    }
    if (handed instanceof Object[][] rows) {
      return new Argument.Area(
          Arrays.stream(rows)
              .map(row -> Arrays.stream(row).map(UnoArguments::argument).toList())
              .toList());
    }
    if (handed instanceof Number number) {
      return number(number.doubleValue());
    }
    return handed instanceof String text ? new Argument.Text(text) : Argument.LEFT_OUT;
  }

  /** The shortest decimal that means this double: 0.1 is meant as 0.1. */
  private static Argument number(double value) {
    return Double.isFinite(value)
        ? new Argument.Number(BigDecimal.valueOf(value))
        : new Argument.Text("#N/A");
  }
}
