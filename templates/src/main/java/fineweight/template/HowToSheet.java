package fineweight.template;

import fineweight.column.RowState;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A page that says what to type, what the calculated columns mean, and what to be careful of. */
final class HowToSheet {
  private static final int TERM_WIDTH = 30;
  private static final int TEXT_WIDTH = 96;

  /** Words break early, so a line holds less than the width. */
  private static final int CHARACTERS_A_LINE = 104;

  private final XSSFSheet sheet;
  private final Looks looks;
  private final WorkbookKind kind;
  private int next;

  HowToSheet(XSSFSheet sheet, Looks looks, WorkbookKind kind) {
    this.kind = kind;
    this.sheet = sheet;
    this.looks = looks;
  }

  void fill(boolean withDemoRows) {
    sheet.setColumnWidth(0, TERM_WIDTH * 256);
    sheet.setColumnWidth(1, TEXT_WIDTH * 256);
    sheet.setDisplayGridlines(false);
    line("How to use this workbook", looks.ofTitle(), 28);
    if (withDemoRows) {
      pair(
          "Invented",
          "The coins, lots, prices and numbers on the sheet "
              + kind.sheet()
              + " are invented to show how it works. Delete those rows before you list your own.");
    }
    typing();
    columns();
    states();
    sheets();
    cautions();
    print();
  }

  private void typing() {
    heading("What to type");
    ofKind();
    pair(
        "One row",
        "One row for each kind of coin; Count says how many. What you do not know stays empty.");
    pair(
        "Your own words",
        "Type names as you know them: war nickel, Morgan, Sovereign, silver round 1 oz .999. You may add, move or rename columns.");
    pair(
        "A scale helps",
        "Where two coins look alike, the weight of one piece in grams often decides. Type it under Weight g.");
    pair(
        "Status",
        "keep, for sale, sold, returned or traded; of a row of three also: sold 1, for sale 2. What was sold wants columns Sold for, Fees and Date sold.");
    pair(
        "Refresh",
        "Close the workbook, then run: fineweight refresh FILE --spot XAG=30.00 --spot XAU=2500.00 (with today's prices of one troy ounce).");
  }

  private void ofKind() {
    if (kind == WorkbookKind.LOT_OPENING) {
      pair(
          "While you open it",
          "Type each piece as it comes out of the bag: a name and a year are enough for many. Put doubtful ones on the scale.");
      pair(
          "What it cost",
          "Type the cost of the whole lot once, in its first row, with the name of the lot in every row. It is shared out to the cent.");
      pair(
          "What you learn",
          "The sheet Fineweight lots says what the lot is worth and with which row it paid for itself.");
    } else if (kind == WorkbookKind.TYPE_SET) {
      pair(
          "The places",
          "The sheet My set lists the holes of the set, one in each row. Change, delete and add as you like: it is yours.");
      pair(
          "The pieces",
          "List every piece on the sheet Inventory, the doubles too. Each is told whether it fills a hole, improves or duplicates.");
      pair(
          "Your word",
          "Write keep or sell under Status to overrule a proposal. The sheet Fineweight type set shows the holes that are left.");
    }
  }

  private void columns() {
    heading("What is filled in for you");
    pair("State", "How far the row is known; see below.");
    pair("Metal, fineness per mille", "The metal that counts and its parts in a thousand.");
    pair(
        "Gross g, fine g (one piece)",
        "Weight of one piece, and the metal in it, by law or mint publication or by your scale.");
    pair(
        "Gold ozt, silver ozt",
        "Fine troy ounces in the whole row: count x fine grams / 31.1034768.");
    pair(
        "Melt",
        "Fine ounces x spot price. It follows the sheet Fineweight spot: change a price there and every figure changes.");
    pair(
        "Melt at most",
        "Where several coins are possible, Melt is the lowest and this is the highest.");
    pair(
        "Worth",
        "Your own price (column or price list), else the higher of metal and face value; the column Worth rests on says which.");
    pair(
        "Cost share",
        "Where one cost stands for several rows of a lot: what each carries of it, exact to the cent.");
    pair(
        "Least price",
        "If you name what selling costs (--fees, --margin): the lowest price that brings cost and margin back.");
    pair(
        "Type set",
        "If you ask for a set (--set us) or have a sheet of its places: fills a hole, improves or duplicates, with a proposal. Write keep or sell under Status: your word stays.");
    pair(
        "Rests on, standard, note",
        "The law, publication or words behind the figure, and what to look at.");
  }

  private void states() {
    heading("The four states");
    pair(RowState.VALUED.label(), "The words leave one coin. Its figures stand in the row.");
    pair(
        RowState.SEVERAL.label(),
        "More than one coin fits. The lowest value counts; the note asks what would settle it.");
    pair(
        RowState.NOT_KNOWN.label(),
        "Not recognised, or no standard exists. No figure; the note says why.");
    pair(RowState.NOTHING.label(), "Known, and without precious metal.");
  }

  private void sheets() {
    heading("The sheets that are added");
    pair("Fineweight spot", "The prices. Type a new one and every figure follows.");
    pair(
        "Fineweight review",
        "The rows that need you, most money first. Choose an answer there and refresh: it stays with the piece.");
    pair("Fineweight totals", "Sums by metal, state, lot and type, with charts.");
    pair(
        "Fineweight lots",
        "What each lot cost, is worth, with which row it paid for itself, and at which spot it breaks even.");
    pair(
        "Fineweight opening",
        "Each lot row by row as it was opened, its worth so far against its cost.");
    pair(
        "Fineweight type set",
        "If you ask for a set: its places, what fills them, the metal of each hole.");
    pair(
        "Fineweight for sale, by place",
        "If you name fees or ask for the lists: what is for sale with its least price; what is kept where (--place-list).");
    pair("Fineweight history", "A line for each day of prices; older lines never change.");
    pair(
        "Sheets of your own",
        "A price list (Type, Year, Grade, Price, As of, Origin), payouts (Metal, Class, Payout), rates (Currency, Rate) or a set (Place, Coin, Years, Mints) on a sheet of its own is found and used.");
    pair(
        "Labels for holders",
        "fineweight labels FILE labels.xlsx --size 38x21 makes a workbook of labels in the size of your label paper (millimetres).");
  }

  private void cautions() {
    heading("Please mind");
    pair(
        "No advice",
        "Not an appraisal or an offer; not investment, tax or legal advice. A buyer pays less than melt.");
    pair(
        "More than metal",
        "Many coins are worth more than their metal: have a doubtful piece looked at before it is sold as scrap.");
    pair(
        "The law",
        "Melting or exporting some coins is unlawful in some places (31 CFR part 82 for United States cents and five cents). Local law decides.");
    pair("Hands off", "Cleaning and test acids harm coins and people.");
  }

  private void heading(String words) {
    next++;
    line(words, looks.ofHeading(), 20);
  }

  private void line(String words, XSSFCellStyle style, int points) {
    XSSFRow row = sheet.createRow(next++);
    row.setHeightInPoints(points);
    cell(row, 0, words, style);
  }

  private void pair(String term, String words) {
    XSSFRow row = sheet.createRow(next++);
    cell(row, 0, term, looks.ofTerm());
    cell(row, 1, words, looks.ofText());
    int lines = 1 + (words.length() - 1) / CHARACTERS_A_LINE;
    row.setHeightInPoints(lines * 15f + 4);
  }

  private static void cell(XSSFRow row, int column, String words, XSSFCellStyle style) {
    XSSFCell cell = row.createCell(column);
    cell.setCellValue(words);
    cell.setCellStyle(style);
  }

  private void print() {
    XSSFPrintSetup setup = sheet.getPrintSetup();
    setup.setPaperSize(PaperSize.A4_PAPER);
    sheet.setFitToPage(true);
    setup.setFitWidth((short) 1);
    setup.setFitHeight((short) 0);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
  }
}
