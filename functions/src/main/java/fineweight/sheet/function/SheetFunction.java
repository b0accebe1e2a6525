package fineweight.sheet.function;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A function of the spreadsheet. Immutable.
 *
 * @param method the second part of the name in camel case, such as {@code fineOunces}
 * @param parameters in their order; those that may be left out last
 * @param texts what a person reads about it
 * @param calculation what it does
 */
public record SheetFunction(
    String method, List<Parameter> parameters, Texts texts, Calculation calculation) {
  /** The first part of every name. */
  public static final String PREFIX = "FINEWEIGHT";

  /**
   * What a person reads about a function.
   *
   * @param purpose one sentence
   * @param example a formula, its arguments parted by semicolons
   * @param result what comes back
   * @param misses what comes back where there is no answer
   */
  public record Texts(String purpose, String example, String result, String misses) {
    public Texts {
      Objects.requireNonNull(purpose, "purpose");
      Objects.requireNonNull(example, "example");
      Objects.requireNonNull(result, "result");
      Objects.requireNonNull(misses, "misses");
    }
  }

  /**
   * @throws IllegalArgumentException if a parameter that is needed follows an optional one
   */
  public SheetFunction {
    Objects.requireNonNull(calculation, "calculation");
    parameters = List.copyOf(parameters);
    boolean optional = false;
    for (Parameter parameter : parameters) {
      if (optional && !parameter.optional()) {
        throw new IllegalArgumentException(parameter.name() + " is needed but follows another");
      }
      optional = parameter.optional();
    }
  }

  /** The name in a cell, such as {@code FINEWEIGHT.FINEOUNCES}. */
  public String name() {
    return PREFIX + "." + method.toUpperCase(Locale.ROOT);
  }

  /** The name and its parameters, those that may be left out in brackets. */
  public String signature() {
    List<String> names = new ArrayList<>();
    parameters.forEach(each -> names.add(each.optional() ? "[" + each.name() + "]" : each.name()));
    return name() + "(" + String.join("; ", names) + ")";
  }

  /** How many arguments cannot be left out. */
  public int needed() {
    return (int) parameters.stream().filter(parameter -> !parameter.optional()).count();
  }

  /** Calculates. What cannot be used comes back as a text; nothing is thrown for it. */
  public Outcome evaluate(List<Argument> arguments) {
    if (arguments.size() < needed() || arguments.size() > parameters.size()) {
      return Outcome.text("the arguments are " + signature());
    }
    try {
      return calculation.of(new Given(parameters, List.copyOf(arguments)));
    } catch (IllegalArgumentException unusable) {
      return Outcome.text(unusable.getMessage());
    }
  }
}
