package fineweight.giveaway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.namespace.QName;
import org.apache.xmlbeans.XmlCursor;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidation;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidations;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STDataValidationType;

/** The drop-downs and checks of a sheet, without texts of the owner's. */
final class CheckedCells {
  private static final String NEWER =
      "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main";
  private static final String FORMULAS = "http://schemas.microsoft.com/office/excel/2006/main";
  private static final List<String> SHARED =
      List.of(
          "type",
          "errorStyle",
          "operator",
          "allowBlank",
          "showDropDown",
          "showInputMessage",
          "showErrorMessage",
          "errorTitle",
          "error",
          "promptTitle",
          "prompt");

  private final String sheet;
  private final FormulaRules formulas;
  private final KeptWords words;
  private final Wishes wishes;
  private final Findings findings;

  CheckedCells(
      String sheet, FormulaRules formulas, KeptWords words, Wishes wishes, Findings findings) {
    this.sheet = sheet;
    this.formulas = formulas;
    this.words = words;
    this.wishes = wishes;
    this.findings = findings;
  }

  /**
   * Newer programs keep a check that looks at another sheet apart from the others; in the common
   * place every program reads it.
   */
  static void gather(CTWorksheet sheet) {
    for (XmlObject each :
        sheet.selectPath("declare namespace n='" + NEWER + "'; .//n:dataValidation")) {
      CTDataValidations all =
          sheet.isSetDataValidations() ? sheet.getDataValidations() : sheet.addNewDataValidations();
      copy(each, all.addNewDataValidation());
    }
  }

  private static void copy(XmlObject from, CTDataValidation to) {
    try (XmlCursor source = from.newCursor();
        XmlCursor target = to.newCursor()) {
      for (String name : SHARED) {
        String value = source.getAttributeText(new QName(name));
        if (value != null) {
          target.setAttributeText(new QName(name), value);
        }
      }
      target.setAttributeText(new QName("sqref"), text(from, "./m:sqref"));
    }
    formula(from, "formula1").ifPresent(to::setFormula1);
    formula(from, "formula2").ifPresent(to::setFormula2);
  }

  private static Optional<String> formula(XmlObject from, String name) {
    String text = text(from, "./n:" + name + "/m:f");
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private static String text(XmlObject from, String path) {
    XmlObject[] found =
        from.selectPath(
            "declare namespace n='" + NEWER + "'; declare namespace m='" + FORMULAS + "'; " + path);
    if (found.length == 0) {
      return "";
    }
    try (XmlCursor cursor = found[0].newCursor()) {
      return cursor.getTextValue();
    }
  }

  /** The formulas behind the drop-downs of a sheet. */
  static List<String> listSources(CTWorksheet sheet) {
    List<String> sources = new ArrayList<>();
    if (sheet.isSetDataValidations()) {
      for (CTDataValidation each : sheet.getDataValidations().getDataValidationList()) {
        if (each.getType() == STDataValidationType.LIST && each.isSetFormula1()) {
          sources.add(each.getFormula1());
        }
      }
    }
    return sources;
  }

  void clean(CTWorksheet worksheet) {
    if (!worksheet.isSetDataValidations()) {
      return;
    }
    CTDataValidations all = worksheet.getDataValidations();
    for (int i = all.sizeOfDataValidationArray() - 1; i >= 0; i--) {
      if (!clean(all.getDataValidationArray(i))) {
        all.removeDataValidation(i);
      }
    }
    if (all.sizeOfDataValidationArray() == 0) {
      worksheet.unsetDataValidations();
    } else {
      all.setCount(all.sizeOfDataValidationArray());
    }
  }

  private boolean clean(CTDataValidation check) {
    messages(check);
    for (int number = 1; number <= 2; number++) {
      String formula = number == 1 ? check.getFormula1() : check.getFormula2();
      Optional<String> kept = formula == null ? Optional.empty() : kept(check, formula);
      if (formula != null && kept.isEmpty()) {
        return false;
      }
      if (kept.isPresent() && number == 1) {
        check.setFormula1(kept.get());
      } else if (kept.isPresent()) {
        check.setFormula2(kept.get());
      }
    }
    return true;
  }

  private Optional<String> kept(CTDataValidation check, String formula) {
    if (check.getType() == STDataValidationType.LIST && formula.startsWith("\"")) {
      return list(formula);
    }
    if (formula.matches("-?[0-9.]{1,20}")) {
      if (!words.knows(formula)) {
        findings.left("limit of a checked cell", formula);
      }
      return Optional.of(formula);
    }
    Optional<String> objection = formulas.objection(formula);
    objection.ifPresent(
        why -> findings.removed("check of cells on \"" + sheet + "\" whose formula " + why));
    return objection.isPresent() ? Optional.empty() : Optional.of(formula);
  }

  private Optional<String> list(String formula) {
    List<String> kept = new ArrayList<>();
    for (String item : formula.replaceAll("^\"|\"$", "").split(",")) {
      if (words.knows(item.replace("\"\"", "\""))) {
        kept.add(item);
      } else {
        findings.removed("word in a drop-down list on \"" + sheet + "\"");
      }
    }
    boolean empty = kept.stream().allMatch(String::isBlank);
    return empty ? Optional.empty() : Optional.of("\"" + String.join(",", kept) + "\"");
  }

  private void messages(CTDataValidation check) {
    if (wishes.messages()) {
      return;
    }
    boolean any =
        check.isSetPrompt()
            || check.isSetPromptTitle()
            || check.isSetError()
            || check.isSetErrorTitle();
    if (any) {
      findings.removed("hint or error message of a checked cell on \"" + sheet + "\"");
    }
    try (XmlCursor cursor = check.newCursor()) {
      for (String name : List.of("prompt", "promptTitle", "error", "errorTitle")) {
        cursor.removeAttribute(new QName(name));
      }
    }
  }
}
