package fineweight.template;

import static fineweight.template.InventoryColumn.COST;
import static fineweight.template.InventoryColumn.COUNT;
import static fineweight.template.InventoryColumn.COUNTRY;
import static fineweight.template.InventoryColumn.CURRENCY;
import static fineweight.template.InventoryColumn.DENOMINATION;
import static fineweight.template.InventoryColumn.GRADE;
import static fineweight.template.InventoryColumn.LOT;
import static fineweight.template.InventoryColumn.MINT;
import static fineweight.template.InventoryColumn.NOTES;
import static fineweight.template.InventoryColumn.NUMBER;
import static fineweight.template.InventoryColumn.OWN_PRICE;
import static fineweight.template.InventoryColumn.STATUS;
import static fineweight.template.InventoryColumn.TYPE;
import static fineweight.template.InventoryColumn.WEIGHT;
import static fineweight.template.InventoryColumn.YEAR;

import java.util.List;

/** What a new workbook is for. */
public enum WorkbookKind {
  /** A whole collection. */
  INVENTORY("inventory", "Inventory", List.of(InventoryColumn.values()), "demo.csv"),

  /** One bag, box or jar, listed piece by piece while it is opened. */
  LOT_OPENING(
      "lot-opening",
      "Lot",
      List.of(
          NUMBER,
          TYPE,
          DENOMINATION,
          YEAR,
          MINT,
          COUNTRY,
          COUNT,
          WEIGHT,
          LOT,
          COST,
          CURRENCY,
          OWN_PRICE,
          STATUS,
          NOTES),
      "demo-lot.csv"),

  /** A set with a place for each type, and the pieces that fill it. */
  TYPE_SET(
      "type-set",
      "Inventory",
      List.of(
          NUMBER,
          COUNTRY,
          YEAR,
          MINT,
          DENOMINATION,
          TYPE,
          COUNT,
          GRADE,
          WEIGHT,
          COST,
          CURRENCY,
          OWN_PRICE,
          STATUS,
          NOTES),
      "demo-set.csv");

  private final String word;
  private final String sheet;
  private final List<InventoryColumn> columns;
  private final String demo;

  WorkbookKind(String word, String sheet, List<InventoryColumn> columns, String demo) {
    this.word = word;
    this.sheet = sheet;
    this.columns = columns;
    this.demo = demo;
  }

  /** As a person types it. */
  @Override
  public String toString() {
    return word;
  }

  /** The name of the sheet with the coins. */
  public String sheet() {
    return sheet;
  }

  List<InventoryColumn> columns() {
    return columns;
  }

  /** The resource with its invented rows. */
  String demo() {
    return demo;
  }

  /** What to type into a column of this workbook. */
  String prompt(InventoryColumn column) {
    if (this == LOT_OPENING && column == COST) {
      return "What the WHOLE lot cost, once, in its first row. Leave the other rows empty.";
    }
    if (this == LOT_OPENING && column == LOT) {
      return "The name of the bag or box, the same in each of its rows.";
    }
    if (this == TYPE_SET && column == STATUS) {
      return "Write keep or sell to overrule the proposal; or where the piece stands.";
    }
    return column.prompt();
  }
}
