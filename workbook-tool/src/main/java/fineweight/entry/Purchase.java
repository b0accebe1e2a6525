package fineweight.entry;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A lot that is opened. Immutable.
 *
 * @param name what its owner calls it; empty if he does not
 * @param cost of the whole lot, in the currency of the sheet
 * @param day on which it was opened
 */
public record Purchase(String name, Optional<BigDecimal> cost, LocalDate day) {}
