package fineweight.workbook.xlsx.style;

/**
 * One cell format, the parts of it that matter here.
 *
 * @param alignment and protection the child elements as written; empty for none
 */
record CellFormat(
    int numberFormat,
    int font,
    int fill,
    int border,
    int parent,
    String alignment,
    String protection) {}
