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
    String protection) {

  /**
   * The same for equal formats and no others. A record's own hash code is linked at run time, which
   * at the start of a short run takes longer than everything that is done with it.
   */
  String key() {
    String numbers = numberFormat + " " + font + " " + fill + " " + border + " " + parent;
    return numbers + "\n" + alignment + "\n" + protection;
  }
}
