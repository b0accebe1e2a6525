package fineweight.table;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.column.Appraisal;
import fineweight.column.Appraiser;
import fineweight.identification.Identification.OneStandard;
import fineweight.money.Amounts;
import fineweight.refresh.inventory.Fate;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.refresh.inventory.RowMoney;
import fineweight.refresh.worth.Worths;
import fineweight.standard.Issue;
import fineweight.table.TableJournal.Kind;
import fineweight.valuation.WorthRange;
import fineweight.workbook.WorkbookRefusal;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
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

  /** So that no piece on the table is taken for a row of the list. */
  private static final int BELOW_ANY_LIST = 1 << 21;

  private final OpenedPieces pieces;
  private final Appraiser appraiser;
  private final Worths worths;
  private final SetPlaces set;
  private final LotKeeping keeping;
  private final PrintWriter out;

  public TableTalk(
      OpenedPieces pieces,
      Appraiser appraiser,
      Worths worths,
      SetPlaces set,
      LotKeeping keeping,
      PrintWriter out) {
    this.pieces = pieces;
    this.appraiser = appraiser;
    this.worths = worths;
    this.set = set;
    this.keeping = keeping;
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
      out.println("Taken up again: " + pieces.all().size() + " pieces typed before.");
      standing();
    }
    help();
    out.flush();
  }

  private void help() {
    out.println(
        "Type each piece as you would say it, such as 1943-P war nickel. Other words: undo, correct NUMBER PIECE, list,");
    out.println(
        "preview (the cells that save would write), save, save sheet, save list, quit (everything is kept), help.");
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
      case "preview" -> keep(this::preview);
      case "save" -> {
        return !keep(() -> done(keeping.underList(pieces)));
      }
      case "save sheet" -> {
        return !keep(() -> done(keeping.onNewSheet(pieces)));
      }
      case "save list" -> {
        return !keep(() -> done(keeping.besides(pieces)));
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
    return new ReadRow(
        BELOW_ANY_LIST + number, appraisal, "", RowMoney.NONE, Fate.UNSAID, Optional.empty());
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
    set.standing(upTo(number, row)).ifPresent(place -> out.println("     " + place));
  }

  /** The pieces before one, and it. */
  private List<ReadRow> upTo(int number, ReadRow last) {
    List<ReadRow> rows = new ArrayList<>();
    pieces.all().headMap(number).forEach((each, words) -> rows.add(row(each, words)));
    rows.add(last);
    return rows;
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

  /** A way to keep the pieces, or to look at it; true when they are kept. */
  @FunctionalInterface
  private interface Keeping {
    boolean run() throws WorkbookRefusal, RefreshRefusal, IOException;
  }

  /** Says in a sentence why it cannot be done; everything typed stays. */
  private boolean keep(Keeping way) throws IOException {
    if (pieces.all().isEmpty()) {
      out.println("There is nothing to save yet.");
      return false;
    }
    try {
      return way.run();
    } catch (WorkbookRefusal | RefreshRefusal refusal) {
      out.println("Not saved: " + refusal.getMessage());
      out.println(
          "Everything typed is kept. Type save again when that is settled, save sheet to put the pieces on a new sheet, or save list to put them into a CSV beside the workbook.");
      return false;
    }
  }

  private boolean done(List<String> told) {
    told.forEach(out::println);
    out.flush();
    return true;
  }

  private boolean preview() throws WorkbookRefusal, RefreshRefusal, IOException {
    keeping.preview(
        pieces,
        change ->
            out.println(
                "  "
                    + change.place()
                    + ": "
                    + (change.before().isEmpty() ? "" : change.before() + " -> ")
                    + change.after()));
    return false;
  }

  private void leave() {
    out.println(
        "Left without saving; everything typed is kept, and the next table goes on with it.");
    out.flush();
  }
}
