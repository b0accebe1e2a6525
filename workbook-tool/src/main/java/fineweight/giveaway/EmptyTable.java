package fineweight.giveaway;

import java.util.Set;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STTableType;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.TableDocument;

/** A table object with its columns, formulas and style, and no link to where its rows came from. */
final class EmptyTable {
  private final FormulaRules formulas;
  private final LookRules looks;
  private final KeptWords words;
  private final Findings findings;

  EmptyTable(FormulaRules formulas, LookRules looks, KeptWords words, Findings findings) {
    this.formulas = formulas;
    this.looks = looks;
    this.words = words;
    this.findings = findings;
  }

  void sieve(TableDocument document, int id) {
    CTTable table = document.getTable();
    if (table.isSetTableType() && table.getTableType() != STTableType.WORKSHEET) {
      findings.removed("link of a table to its source");
      table.unsetTableType();
    }
    table.setId(id);
    findings.left("name of a table", table.getDisplayName());
    for (CTTableColumn column : table.getTableColumns().getTableColumnList()) {
      if (column.isSetCalculatedColumnFormula()
          && formulas.objection(column.getCalculatedColumnFormula().getStringValue()).isPresent()) {
        column.unsetCalculatedColumnFormula();
      }
      if (column.isSetTotalsRowFormula()
          && formulas.objection(column.getTotalsRowFormula().getStringValue()).isPresent()) {
        column.unsetTotalsRowFormula();
      }
      if (column.isSetQueryTableFieldId()) {
        column.unsetQueryTableFieldId();
      }
    }
    new SchemaSieve(
            Set.of("extLst", "filterColumn", "sortState", "xmlColumnPr"), Set.of(), this::free)
        .sieve(document);
    if (table.isSetConnectionId()) {
      table.unsetConnectionId();
    }
  }

  private String free(String element, String attribute, String value) {
    return switch (element + " " + attribute) {
      case "table name", "table displayName", "tableColumn name" -> value;
      case "table ref", "autoFilter ref" ->
          value.matches("[A-Z]{1,3}[0-9]{1,7}:[A-Z]{1,3}[0-9]{1,7}") ? value : null;
      case "tableColumn totalsRowLabel" -> words.knows(value) ? value : null;
      case "tableStyleInfo name" -> looks.tableStyle(value);
      case "calculatedColumnFormula ", "totalsRowFormula " -> value;
      default -> null;
    };
  }
}
