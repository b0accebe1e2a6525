package fineweight.window;

import fineweight.refresh.Refresh;
import fineweight.refresh.RefreshReport;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.inventory.Progress;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.settings.SettingException;
import fineweight.standard.Standards;
import fineweight.workbook.CellChange;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.Workbooks;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Looks into a workbook and fills it, as the command does. Knows no screen; may take long. */
public final class FillingJob {
  /** More lines than anybody reads; the count says how many there are. */
  static final int MOST_CHANGES_SHOWN = 5000;

  private final Workbooks workbooks;
  private final Standards standards;
  private final String home;
  private final Clock clock;

  /**
   * @param standards what may be found
   * @param home catalogue key of the country meant where none is named
   * @param clock tells the day of the prices
   */
  public FillingJob(Workbooks workbooks, Standards standards, String home, Clock clock) {
    this.workbooks = workbooks;
    this.standards = standards;
    this.home = home;
    this.clock = clock;
  }

  /** What would be understood and changed; writes nothing. */
  Outcome look(Wanted wanted) {
    List<CellChange> changes = new ArrayList<>();
    return attempt(
        wanted,
        (workbook, wishes) ->
            Refresh.preview(
                workbook,
                wishes,
                change -> {
                  if (changes.size() < MOST_CHANGES_SHOWN) {
                    changes.add(change);
                  }
                },
                Progress.UNSEEN),
        changes);
  }

  /** Fills the workbook. */
  Outcome fill(Wanted wanted) {
    return attempt(wanted, Refresh::run, List.of());
  }

  /** One of the two things to do with a workbook. */
  private interface Deed {
    RefreshReport with(Workbook workbook, RefreshWishes wishes)
        throws WorkbookRefusal, RefreshRefusal;
  }

  private Outcome attempt(Wanted wanted, Deed deed, List<CellChange> changes) {
    List<String> sheets = new ArrayList<>();
    try (Workbook workbook = workbooks.open(wanted.file())) {
      workbook.sheets().stream()
          .filter(SheetSummary::isTable)
          .map(SheetSummary::name)
          .filter(name -> !name.isEmpty())
          .forEach(sheets::add);
      RefreshWishes wishes = wanted.wishes(standards, home, LocalDate.now(clock));
      RefreshReport report = deed.with(workbook, wishes);
      return Outcome.of(sheets, report, changes);
    } catch (RefreshRefusal refusal) {
      return Outcome.refused(sheets, Sentences.of(refusal));
    } catch (WorkbookRefusal | SettingException refusal) {
      return Outcome.refused(sheets, Sentences.of(refusal));
    } catch (IOException | RuntimeException fault) {
      return Outcome.refused(sheets, Sentences.ofFault(fault));
    }
  }
}
