package fineweight.column;

import fineweight.metal.Metal;
import java.util.Locale;
import java.util.Optional;

/** The columns that we put into an inventory, in their order. */
public enum CalculatedColumn {
  KEY("Piece no.", "0", 9, null),
  STATE("State", "", 19, null),
  METAL("Metal", "", 13, null),
  FINENESS("Fineness ‰", "0.###", 11, null),
  GROSS("Gross g each", "0.000", 11, null),
  FINE("Fine g each", "0.0000", 11, null),
  GOLD("Gold ozt", "0.0000", 11, Metal.GOLD),
  SILVER("Silver ozt", "0.0000", 11, Metal.SILVER),
  PLATINUM("Platinum ozt", "0.0000", 12, Metal.PLATINUM),
  PALLADIUM("Palladium ozt", "0.0000", 12, Metal.PALLADIUM),
  MELT("Melt", "#,##0.00", 13, null),
  MELT_AT_MOST("Melt at most", "#,##0.00", 18, null),
  WORTH("Worth", "#,##0.00", 13, null),
  COST_SHARE("Cost share", "#,##0.00", 16, null),
  LEAST_PRICE("Least price", "#,##0.00", 16, null),
  TYPE_SET("Type set", "", 40, null),
  METAL_GROUND("Metal rests on", "", 34, null),
  WORTH_GROUND("Worth rests on", "", 34, null),
  STANDARD("Standard", "", 26, null),
  NOTE("Note", "", 60, null);

  private final String heading;
  private final String format;
  private final double width;
  private final Metal metal;

  CalculatedColumn(String heading, String format, double width, Metal metal) {
    this.heading = heading;
    this.format = format;
    this.width = width;
    this.metal = metal;
  }

  /** Its part in the hidden names that mark our columns. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The column of that code. */
  public static Optional<CalculatedColumn> ofCode(String code) {
    for (CalculatedColumn column : values()) {
      if (column.code().equals(code)) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  /**
   * The heading.
   *
   * @param currency ISO 4217 code, shown where the column holds money
   */
  public String heading(String currency) {
    return isMoney() ? heading + " " + currency : heading;
  }

  public boolean isMoney() {
    return this == MELT
        || this == MELT_AT_MOST
        || this == WORTH
        || this == COST_SHARE
        || this == LEAST_PRICE;
  }

  /** Whether only some inventories have it: those with lots, a set or pieces for sale. */
  public boolean isFurther() {
    return this == COST_SHARE || this == LEAST_PRICE || this == TYPE_SET;
  }

  /** The number format of its cells; empty for the general one. */
  public String format() {
    return format;
  }

  /** The width of a new column in characters. */
  public double width() {
    return width;
  }

  /** The metal whose fine troy ounces the column holds. */
  public Optional<Metal> metal() {
    return Optional.ofNullable(metal);
  }

  /** The column of a precious metal's fine troy ounces. */
  public static CalculatedColumn ounces(Metal metal) {
    return switch (metal) {
      case GOLD -> GOLD;
      case SILVER -> SILVER;
      case PLATINUM -> PLATINUM;
      case PALLADIUM -> PALLADIUM;
      default -> throw new IllegalArgumentException("no column of ounces for " + metal.word());
    };
  }
}
