package fineweight.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import fineweight.table.TableJournal.Kind;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * The list that a table leaves: a CSV of its own beside the workbook, with headings that a refresh
 * understands and the lot's cost in the first row.
 */
final class LotList {
  private LotList() {}

  /** The first name beside the workbook that is free. */
  static Path free(Path workbook) {
    String name = workbook.getFileName().toString().replaceFirst("\\.[A-Za-z]+$", "");
    Path folder = workbook.toAbsolutePath().getParent();
    Path file = folder.resolve(name + "-lot-1.csv");
    for (int i = 2; Files.exists(file); i++) {
      file = folder.resolve(name + "-lot-" + i + ".csv");
    }
    return file;
  }

  /** Writes the whole list; writing it again gives the same file. */
  static void write(Path file, OpenedPieces pieces) throws IOException {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().build(text)) {
      writer.writeRecord("Number", "Lot", "Description", "Cost");
      String[] cost = {pieces.said(Kind.COST)};
      pieces
          .all()
          .forEach(
              (number, words) -> {
                writer.writeRecord(
                    Integer.toString(number), pieces.said(Kind.LOT), harmless(words), cost[0]);
                cost[0] = "";
              });
    }
    Path whole = file.resolveSibling("." + file.getFileName() + ".new");
    try (FileChannel channel =
        FileChannel.open(
            whole,
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
    Files.move(whole, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  /** No office shall take a cell of words for a formula. */
  private static String harmless(String words) {
    return words.matches("[=+\\-@].*") ? "'" + words : words;
  }
}
