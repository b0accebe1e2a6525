package fineweight.workbook.validity;

import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.RawZip;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks the build of a whole .xlsx file. Rules follow ECMA-376 Part 1 (SpreadsheetML) and Part 2
 * (packages).
 */
public final class WorkbookValidator {
  private WorkbookValidator() {}

  /** One sentence for each fault; an empty list for a sound file. */
  public static List<String> findings(Path file) throws IOException {
    return findings(RawZip.of(file));
  }

  static List<String> findings(RawZip zip) throws IOException {
    List<String> findings = new ArrayList<>();
    PackageParts parts = new PackageParts(zip);
    PackageRules.check(parts, findings);
    WorkbookRules.check(parts, findings);
    StyleRules styles = StyleRules.check(parts, findings);
    TextRules texts = TextRules.check(parts, findings);
    for (PackageParts.Sheet sheet : parts.sheets()) {
      if (sheet.isTable()) {
        new SheetRules(sheet.part(), parts.tree(sheet.part()), styles, texts, findings).check();
      }
    }
    TableRules.check(parts, texts, findings);
    SchemaRules.check(parts, findings);
    return findings;
  }
}
