package fineweight.workbook.xlsx.splice;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Copies, drops and writes between cuts. */
final class Cutting {
  private static final int ENOUGH = 1 << 13;

  private final CutStream cut;
  private final OutputStream out;
  private final boolean kept;

  /**
   * @param kept whether anybody will see what is written
   */
  Cutting(CutStream cut, OutputStream out, boolean kept) {
    this.cut = cut;
    this.out = out;
    this.kept = kept;
  }

  /** Whether what is written is worth making. */
  boolean isKept() {
    return kept;
  }

  /** Copies up to a place. */
  void copyTo(long offset) throws IOException {
    cut.copyTo(offset, out);
  }

  /** Copies up to a tag and refuses to go on if no tag begins there. */
  void copyToTag(long offset) throws IOException {
    if (!cut.tagBeginsAt(offset)) {
      throw new IllegalStateException("no tag begins at " + offset);
    }
    cut.copyTo(offset, out);
  }

  /** Copies what has gathered, if it is much; nothing before the place may be cut afterwards. */
  void settle(long offset) throws IOException {
    if (cut.gathered(offset) > ENOUGH) {
      cut.copyTo(offset, out);
    }
  }

  void dropTo(long offset) {
    cut.dropTo(offset);
  }

  void write(String xml) throws IOException {
    out.write(xml.getBytes(StandardCharsets.UTF_8));
  }

  String text(long start, long end) {
    return cut.text(start, end);
  }

  /** Leaves out a piece and writes another in its place. */
  void replace(long start, long end, String xml) throws IOException {
    copyToTag(start);
    dropTo(end);
    write(xml);
  }
}
