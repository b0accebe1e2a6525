package fineweight.workbook;

/**
 * How a cell that we put in looks, beyond what it takes over from the neighbouring column.
 * Immutable.
 *
 * @param numberFormat a format code such as {@code 0.0000}; empty for the general format
 * @param wrapped whether long text breaks into lines
 */
public record CellLook(String numberFormat, boolean wrapped) {
  public static final CellLook GENERAL = new CellLook("", false);

  public static CellLook number(String format) {
    return new CellLook(format, false);
  }
}
