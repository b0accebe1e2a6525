package fineweight.tool;

import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.settings.SettingException;
import fineweight.workbook.WorkbookRefusal;

/**
 * What went wrong, for the user. Immutable.
 *
 * @param sentence with its full stop
 * @param code what the run ends with
 */
record Complaint(String sentence, ExitCode code) {
  static Complaint of(Exception thrown) {
    if (thrown instanceof SettingException) {
      return new Complaint(Main.sentence(thrown.getMessage()), ExitCode.USAGE);
    }
    if (thrown instanceof WorkbookRefusal refusal) {
      return new Complaint(Main.sentence(refusal.getMessage()), ExitCode.of(refusal));
    }
    if (thrown instanceof RefreshRefusal refusal) {
      return new Complaint(Main.sentence(refusal.getMessage()), ExitCode.of(refusal));
    }
    return new Complaint(
        "This is a fault of the program and not of your file, which was not changed: "
            + thrown.getClass().getSimpleName().replace("Exception", "")
            + " "
            + thrown.getMessage()
            + ". Please report it with the command you typed.",
        ExitCode.INTERNAL);
  }
}
