package fineweight.workbook.xlsx.sheet;

/**
 * The start tag of a row.
 *
 * @param index from 0
 * @param start its place in the part's bytes
 * @param end behind the tag
 * @param empty whether the tag is its own end
 * @param referenced whether it says itself which row it is
 * @param style the format that the row gives to its cells; -1 for none
 */
public record RowTag(
    int index, long start, long end, boolean empty, boolean referenced, int style) {}
