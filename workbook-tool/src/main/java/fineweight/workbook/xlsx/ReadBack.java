package fineweight.workbook.xlsx;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.splice.SheetPlan;
import fineweight.workbook.xlsx.splice.WishTrail;
import fineweight.workbook.xlsx.zip.PartReader;
import java.io.IOException;
import java.io.InputStream;

/**
 * Reads one of the owner's sheets with a parser while it is written, and compares it with what was
 * wished for. That the bytes on the disk are those that were read here is told by their checksum.
 */
final class ReadBack implements PartReader {
  private final SheetPlan plan;
  private final CellReading reading;
  private final WishTrail wishes = new WishTrail();
  private boolean asMeant;
  private Throwable failure;

  /** Uses nothing that the writing changes. */
  ReadBack(OpenedPackage source, SheetRun sheet) {
    plan = sheet.plan();
    reading = source.newReading(source.newStyles());
  }

  WishTrail wishes() {
    return wishes;
  }

  @Override
  public void read(InputStream written) {
    try {
      asMeant = plan.isIn(written, reading, wishes);
    } catch (IOException | WorkbookRefusal | RuntimeException | Error e) {
      failure = e;
    }
  }

  /** What the reading threw is thrown here, where a reading back is expected to fail. */
  boolean wasAsMeant() throws IOException, WorkbookRefusal {
    if (failure instanceof IOException e) {
      throw e;
    }
    if (failure instanceof WorkbookRefusal e) {
      throw e;
    }
    if (failure instanceof RuntimeException e) {
      throw e;
    }
    if (failure instanceof Error e) {
      throw e;
    }
    return asMeant;
  }
}
