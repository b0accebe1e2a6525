package fineweight.sheet.function;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The arguments of one call, by the names of the parameters. Immutable. */
public final class Given {
  private final List<Parameter> parameters;
  private final List<Argument> arguments;

  Given(List<Parameter> parameters, List<Argument> arguments) {
    this.parameters = parameters;
    this.arguments = arguments;
  }

  /**
   * @throws IllegalStateException if the function has no such parameter
   */
  public Argument at(String name) {
    for (int i = 0; i < parameters.size(); i++) {
      if (parameters.get(i).name().equals(name)) {
        return i < arguments.size() ? arguments.get(i) : Argument.LEFT_OUT;
      }
    }
    throw new IllegalStateException("no parameter " + name);
  }

  public boolean has(String name) {
    return parameters.stream().anyMatch(parameter -> parameter.name().equals(name));
  }

  /** The words of an argument; empty if it says nothing. */
  public String words(String name) {
    Argument argument = at(name);
    return argument.saysNothing() ? "" : argument.words();
  }

  /**
   * A number; empty if the argument was left out or is an empty text. A blank cell is zero.
   *
   * @throws UnusableArgument if it is something else
   */
  public Optional<BigDecimal> number(String name) {
    Argument argument = at(name);
    return argument instanceof Argument.Area area && isSingle(area)
        ? number(name, area.rows().get(0).get(0))
        : number(name, argument);
  }

  private static boolean isSingle(Argument.Area area) {
    return area.rows().size() == 1 && area.rows().get(0).size() == 1;
  }

  /**
   * A number of an argument or of a cell of an area.
   *
   * @throws UnusableArgument if it is something else
   */
  public static Optional<BigDecimal> number(String name, Argument argument) {
    if (argument instanceof Argument.Number number) {
      return Optional.of(number.value());
    }
    if (argument instanceof Argument.Area) {
      throw new UnusableArgument(name, "expected one number, not several cells");
    }
    String words = argument.words();
    if (words.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(parsed(name, words));
  }

  private static BigDecimal parsed(String name, String words) {
    boolean percent = words.endsWith("%");
    String digits = percent ? words.substring(0, words.length() - 1).strip() : words;
    if (digits.matches("[+-]?(\\d{1,30}(\\.\\d{0,30})?|\\.\\d{1,30})")) {
      BigDecimal number = new BigDecimal(digits);
      return percent ? number.movePointLeft(2) : number;
    }
    throw new UnusableArgument(name, "expected a number, found \"" + shortened(words) + "\"");
  }

  /** A text short enough for a message. */
  public static String shortened(String words) {
    return words.length() <= 40 ? words : words.substring(0, 40) + "...";
  }

  /**
   * A number of zero or more.
   *
   * @throws UnusableArgument if it is negative or no number
   */
  public BigDecimal notNegative(String name, BigDecimal otherwise) {
    BigDecimal number = number(name).orElse(otherwise);
    if (number.signum() < 0) {
      throw new UnusableArgument(
          name, "expected zero or more, found " + shortened(number.toPlainString()));
    }
    return number;
  }

  /**
   * A number of more than zero.
   *
   * @throws UnusableArgument if it is missing, zero, negative or no number
   */
  public BigDecimal positive(String name) {
    BigDecimal number =
        number(name).orElseThrow(() -> new UnusableArgument(name, "expected a number"));
    if (number.signum() <= 0) {
      throw new UnusableArgument(
          name, "expected a number above zero, found " + shortened(number.toPlainString()));
    }
    return number;
  }

  /**
   * A share as spreadsheets hold it: 2% is 0.02.
   *
   * @param most the largest that makes sense
   * @return in per cent
   * @throws UnusableArgument if it lies outside zero and the largest, or is no number
   */
  public BigDecimal percent(String name, BigDecimal otherwise, BigDecimal most) {
    BigDecimal share = number(name).orElse(otherwise);
    if (share.signum() < 0 || share.compareTo(most) > 0) {
      throw new UnusableArgument(
          name,
          "expected a share from 0% to "
              + most.movePointRight(2).toPlainString()
              + "%, such as 2% or 0.02, found "
              + shortened(share.toPlainString()));
    }
    return share.movePointRight(2);
  }

  /** The rows of an argument; a single cell is one row of one cell, one left out is no row. */
  public List<List<Argument>> rows(String name) {
    Argument argument = at(name);
    if (argument instanceof Argument.Area area) {
      return area.rows();
    }
    return argument instanceof Argument.Blank ? List.of() : List.of(List.of(argument));
  }

  /** The cells of an argument, row by row. */
  public List<Argument> cells(String name) {
    List<Argument> cells = new ArrayList<>();
    rows(name).forEach(cells::addAll);
    return cells;
  }
}
