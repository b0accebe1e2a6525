package fineweight.template;

import fineweight.sale.SaleState;
import java.util.Arrays;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidationConstraint;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * What may be typed into the inventory: drop-downs where the trade has a short list, and checks
 * that catch slips. A check stops only what cannot be meant; elsewhere it asks.
 */
final class Entries {
  private static final String[] MINT_MARKS = {"P", "D", "S", "O", "CC", "W"};

  /** The numbers in use on the scale from 1 to 70; common practice, no source. */
  private static final String[] GRADES =
      ("1,2,3,4,6,8,10,12,15,20,25,30,35,40,45,50,53,55,58,60,61,62,63,64,65,66,67,68,69,70")
          .split(",");

  /** ISO 4217 codes. */
  private static final String[] CURRENCIES = {
    "USD", "EUR", "GBP", "CHF", "CAD", "AUD", "NZD", "JPY", "SEK", "NOK", "DKK", "PLN", "CZK", "MXN"
  };

  private final XSSFSheet sheet;
  private final DataValidationHelper make;
  private final int lastRow;
  private final WorkbookKind kind;

  Entries(XSSFSheet sheet, int lastRow, WorkbookKind kind) {
    this.sheet = sheet;
    this.kind = kind;
    this.make = sheet.getDataValidationHelper();
    this.lastRow = lastRow;
  }

  void add() {
    for (int place = 0; place < kind.columns().size(); place++) {
      InventoryColumn column = kind.columns().get(place);
      DataValidation entry =
          make.createValidation(
              constraint(column), new CellRangeAddressList(1, lastRow - 1, place, place));
      entry.createPromptBox(column.promptTitle(), kind.prompt(column));
      entry.setShowPromptBox(true);
      entry.setEmptyCellAllowed(true);
      refusal(column, entry);
      sheet.addValidationData(entry);
    }
  }

  private DataValidationConstraint constraint(InventoryColumn column) {
    return switch (column) {
      case NUMBER -> make.createCustomConstraint("COUNTIF($A$2:$A$" + lastRow + ",$A2)=1");
      case MINT -> list(MINT_MARKS);
      case GRADE -> list(GRADES);
      case CURRENCY -> list(CURRENCIES);
      case STATUS -> list(statuses());
      case COUNT -> make.createIntegerConstraint(OperatorType.GREATER_OR_EQUAL, "1", null);
      case COST, OWN_PRICE ->
          make.createDecimalConstraint(OperatorType.GREATER_OR_EQUAL, "0", null);
      case WEIGHT -> make.createDecimalConstraint(OperatorType.GREATER_THAN, "0", null);
      default -> new XSSFDataValidationConstraint(ValidationType.ANY, "");
    };
  }

  private String[] statuses() {
    Stream<String> proposals =
        kind == WorkbookKind.TYPE_SET ? Stream.of("keep", "sell") : Stream.of();
    return Stream.concat(proposals, Arrays.stream(SaleState.values()).map(SaleState::word))
        .toArray(String[]::new);
  }

  private DataValidationConstraint list(String[] words) {
    return make.createExplicitListConstraint(words);
  }

  private void refusal(InventoryColumn column, DataValidation entry) {
    switch (column) {
      case NUMBER ->
          say(
              entry,
              DataValidation.ErrorStyle.STOP,
              "This number stands in another row already. Type one that is free.");
      case COUNT ->
          say(
              entry,
              DataValidation.ErrorStyle.STOP,
              "Count is a whole number of pieces, 1 or more.");
      case COST, OWN_PRICE ->
          say(
              entry,
              DataValidation.ErrorStyle.STOP,
              "Type an amount of 0 or more, without a currency sign.");
      case WEIGHT ->
          say(entry, DataValidation.ErrorStyle.STOP, "Type the grams of one piece, such as 6.25.");
      case MINT ->
          say(
              entry,
              DataValidation.ErrorStyle.WARNING,
              "Not a mint mark of the United States. Keep it if the coin is from elsewhere.");
      case GRADE ->
          say(
              entry,
              DataValidation.ErrorStyle.WARNING,
              "Not a number in use on the scale from 1 to 70. Words such as VF are read too.");
      case CURRENCY ->
          say(
              entry,
              DataValidation.ErrorStyle.WARNING,
              "Not in the short list. Keep it if it is an ISO 4217 code.");
      case STATUS ->
          say(
              entry,
              DataValidation.ErrorStyle.STOP,
              "Choose one of: " + String.join(", ", statuses()) + ".");
      default -> entry.setShowErrorBox(false);
    }
  }

  private static void say(DataValidation entry, int style, String words) {
    entry.setErrorStyle(style);
    entry.createErrorBox("Please check", words);
    entry.setShowErrorBox(true);
  }
}
