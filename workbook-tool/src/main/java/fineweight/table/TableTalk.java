package fineweight.table;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.column.Appraisal;
import fineweight.column.Appraiser;
import fineweight.identification.Identification.OneStandard;
import fineweight.money.Amounts;
import fineweight.refresh.inventory.Fate;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RowMoney;
import fineweight.refresh.worth.Worths;
import fineweight.standard.Issue;
import fineweight.table.TableJournal.Kind;
import fineweight.valuation.WorthRange;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** The talk at the table: a piece or a command in, what it is and how the lot stands out. */
public final class TableTalk {
  private static final Pattern CORRECT = Pattern.compile("correct\\s+(\\d{1,6})\\s+(.+)");

  private final OpenedPieces pieces;
  private final Appraiser appraiser;
  private final Worths worths;
  private final Path workbook;
  private final PrintWriter out;

  /**
   * @param workbook beside which the list is put
   */
  public TableTalk(
      OpenedPieces pieces, Appraiser appraiser, Worths worths, Path workbook, PrintWriter out) {
    this.pieces = pieces;
    this.appraiser = appraiser;
    this.worths = worths;
    this.workbook = workbook;
    this.out = out;
  }

  /** Talks until the pieces are saved, the person leaves, or the input ends. */
  public void talk(BufferedReader in) throws IOException {
    greet();
    for (String line = in.readLine(); line != null; line = in.readLine()) {
      if (!answer(line.strip())) {
        return;
      }
      out.flush();
    }
    leave();
  }

  private void greet() {
    String lot = pieces.said(Kind.LOT);
    out.println(lot.isEmpty() ? "A lot is opened." : "The lot \"" + lot + "\" is opened.");
    if (!pieces.all().isEmpty()) {
      out.println("Taken up again with " + pieces.all().size() + " pieces typed before.");
      standing();
    }
    help();
    out.flush();
  }

  private void help() {
    out.println(
        "Type each piece as you would say it, such as 1943-P war nickel. Other words: undo, correct NUMBER PIECE, list, save, quit.");
  }

  /** False when the talk is over. */
  private boolean answer(String line) throws IOException {
    Matcher correct = CORRECT.matcher(line);
    switch (line) {
      case "" -> {
        return true;
      }
      case "undo" -> undo();
      case "list" -> pieces.all().forEach(this::tell);
      case "help", "?" -> help();
      case "save" -> {
        return !save();
      }
      case "quit", "exit" -> {
        leave();
        return false;
      }
      default -> {
        if (correct.matches()) {
          correct(Integer.parseInt(correct.group(1)), correct.group(2));
        } else {
          tell(pieces.add(line), line);
          standing();
        }
      }
    }
    return true;
  }

  private void undo() throws IOException {
    Optional<String> removed = pieces.removeLast();
    out.println(removed.map(words -> "Taken back: " + words).orElse("There is no piece yet."));
    standing();
  }

  private void correct(int number, String words) throws IOException {
    if (pieces.correct(number, words)) {
      tell(number, words);
      standing();
    } else {
      out.println("There is no piece " + number + ".");
    }
  }

  private ReadRow row(int number, String words) {
    Appraisal appraisal = appraiser.appraise(List.of(new Field(FieldRole.DESCRIPTION, words)));
    return new ReadRow(number, appraisal, "", RowMoney.NONE, Fate.UNSAID, Optional.empty());
  }

  private void tell(int number, String words) {
    ReadRow row = row(number, words);
    Appraisal appraisal = row.appraisal();
    WorthRange range = worths.range(row);
    String metal =
        appraisal.figures().metal().isEmpty() ? "metal not known" : appraisal.figures().metal();
    out.println(
        "  "
            + number
            + "  "
            + what(appraisal, words)
            + "; "
            + metal
            + appraisal.figures().fineness().map(share -> " " + share).orElse("")
            + "; worth "
            + worth(range));
    appraisal.notes().stream()
        .filter(note -> !note.startsWith("No country is named"))
        .limit(2)
        .forEach(note -> out.println("     " + note));
  }

  private static String what(Appraisal appraisal, String words) {
    String count =
        appraisal.pieces().filter(pieces -> pieces > 1).map(pieces -> pieces + " x ").orElse("");
    if (appraisal.identification() instanceof OneStandard one) {
      Issue issue = one.standard().issue();
      String type = issue.types().isEmpty() ? "" : ", " + issue.types().get(0);
      return count + issue.denomination() + type;
    }
    return count + words;
  }

  private static String worth(WorthRange range) {
    Money low = range.low().worth().atCell();
    Money high = range.high().worth().atCell();
    return low.isEqual(high)
        ? Amounts.words(low)
        : "at least " + Amounts.words(low) + ", at most " + Amounts.words(high);
  }

  /** The running total against the cost. */
  private void standing() {
    Money total = Money.zero(worths.currency());
    for (Map.Entry<Integer, String> piece : pieces.all().entrySet()) {
      WorthRange range = worths.range(row(piece.getKey(), piece.getValue()));
      total = total.plus(range.low().worth().atCell());
    }
    String cost = pieces.said(Kind.COST);
    String against = "";
    if (!cost.isEmpty()) {
      Money paid = Amounts.atCell(BigMoney.of(worths.currency(), new BigDecimal(cost)));
      Money left = total.minus(paid);
      against =
          left.isNegative()
              ? ", " + Amounts.words(left.abs()) + " short of the cost of " + Amounts.words(paid)
              : ", the lot has paid for itself: " + Amounts.words(left) + " over its cost";
    }
    out.println("     " + pieces.all().size() + " typed, " + Amounts.words(total) + against);
  }

  /** True when the list is written. */
  private boolean save() throws IOException {
    if (pieces.all().isEmpty()) {
      out.println("There is nothing to save yet.");
      return false;
    }
    if (pieces.said(Kind.LIST).isEmpty()) {
      pieces.say(Kind.LIST, LotList.free(workbook).getFileName().toString());
    }
    Path list = workbook.toAbsolutePath().resolveSibling(pieces.said(Kind.LIST));
    LotList.write(list, pieces);
    pieces.settled();
    out.println(
        pieces.all().size()
            + " pieces are saved as a list of their own, "
            + list.getFileName()
            + ", beside "
            + workbook.getFileName()
            + ". Rows are not put into your own sheet: copy them there, or refresh the list by itself.");
    out.flush();
    return true;
  }

  private void leave() {
    out.println(
        "Left without saving; everything typed is kept, and the next table goes on with it.");
    out.flush();
  }
}
