package fineweight.workbook;

/**
 * A defined name.
 *
 * @param name without the sheet, such as {@code Fineweight_XAG}
 * @param refersTo the formula behind it without the equals sign, such as {@code 'My coins'!$C$1}
 * @param hidden whether the office leaves it out of its list of names
 */
public record NamedCell(String name, String refersTo, boolean hidden) {}
