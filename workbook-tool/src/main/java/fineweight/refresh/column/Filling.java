package fineweight.refresh.column;

import fineweight.column.Appraisal;
import fineweight.column.CalculatedColumn;
import fineweight.column.MeltFormula;
import fineweight.column.RowState;
import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Worths;
import fineweight.valuation.Basis;
import fineweight.valuation.Worth;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.ColumnEdit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import org.joda.money.BigMoney;

/** What shall stand in our columns, row by row. */
public final class Filling {
  private final Map<CalculatedColumn, Integer> places;
  private final Map<Integer, ReadRow> rows = new HashMap<>();
  private final PieceNumbers numbers;
  private final MeltFormula melt;
  private final Spot spot;
  private final Worths worths;
  private final boolean sayHome;
  private final boolean formulas;
  private final Optional<CalledMelt> called;
  private final boolean plain;
  private final Map<CalculatedColumn, IntFunction<CellContent>> further;

  /**
   * How cells are written.
   *
   * @param sayHome whether a row's note says that the home country was assumed; not if no row names
   *     one
   * @param money what money cells hold
   * @param plain whether the file may know no letters beyond its own encoding
   */
  public record Manner(boolean sayHome, MoneyCells money, boolean plain) {}

  /**
   * @param further the content of columns that only some inventories have, by row
   */
  public Filling(
      ColumnPlan plan,
      List<ReadRow> read,
      PieceNumbers numbers,
      Worths worths,
      Manner manner,
      Map<CalculatedColumn, IntFunction<CellContent>> further) {
    this.places = plan.places();
    this.numbers = numbers;
    this.spot = worths.spot();
    this.melt = worths.melt();
    this.worths = worths;
    this.sayHome = manner.sayHome();
    this.formulas = manner.money() != MoneyCells.VALUES;
    this.called =
        manner.money() == MoneyCells.ADD_IN_FORMULAS
            ? Optional.of(new CalledMelt(spot))
            : Optional.empty();
    this.plain = manner.plain();
    this.further = further;
    read.forEach(row -> rows.put(row.row(), row));
  }

  /**
   * @param headings the headings' texts of the owner, which ours may not repeat
   */
  public List<ColumnEdit> edits(Set<String> headings) {
    List<ColumnEdit> edits = new ArrayList<>();
    places.entrySet().stream()
        .sorted(Map.Entry.comparingByValue())
        .forEach(entry -> edits.add(edit(entry.getKey(), entry.getValue(), headings)));
    return edits;
  }

  private ColumnEdit edit(CalculatedColumn column, int place, Set<String> headings) {
    String heading = column.heading(spot.prices().currency().getCode());
    boolean taken = headings.stream().anyMatch(heading::equalsIgnoreCase);
    CellLook look =
        column == CalculatedColumn.NOTE
            ? new CellLook("", false)
            : CellLook.number(column.format());
    return new ColumnEdit(
        place,
        taken ? heading + OurMarks.BEHIND_HEADING : heading,
        look,
        column.width(),
        row -> content(column, row));
  }

  private CellContent content(CalculatedColumn column, int row) {
    ReadRow read = rows.get(row);
    if (read == null) {
      return CellContent.EMPTY;
    }
    if (!read.isCoin()) {
      // A total or a heading within the list: what its owner put beside it stays.
      return null;
    }
    Appraisal appraisal = read.appraisal();
    if (column.metal().isPresent()) {
      return number(appraisal.ounces(column.metal().get()).map(MeltFormula::ounces));
    }
    return switch (column) {
      case KEY -> number(Optional.of(new BigDecimal(numbers.of(row))));
      case STATE -> text(plain ? appraisal.state().plainLabel() : appraisal.state().label());
      case METAL -> text(appraisal.figures().metal());
      case FINENESS -> number(appraisal.figures().fineness().map(Fineness::perMille));
      case GROSS -> number(appraisal.figures().gross().map(Mass::grams));
      case FINE -> number(fine(appraisal));
      case MELT -> melt(appraisal, row);
      case MELT_AT_MOST -> atMost(appraisal);
      case WORTH -> worth(read, row);
      case WORTH_GROUND -> text(worths.of(read).map(Worth::sentence).orElse(""));
      case METAL_GROUND -> text(appraisal.figures().ground());
      case STANDARD -> text(appraisal.figures().standardId());
      case NOTE -> text(String.join(" ", notes(appraisal)));
      // A further column that this run says nothing about stays as it stands.
      default -> further.getOrDefault(column, unsaid -> null).apply(row);
    };
  }

  /** Fine grams of the main precious metal. */
  private static Optional<BigDecimal> fine(Appraisal appraisal) {
    FineContent content = appraisal.figures().content();
    return content.masses().entrySet().stream()
        .filter(entry -> entry.getKey().isPrecious())
        .map(entry -> entry.getValue().grams())
        .max(BigDecimal::compareTo);
  }

  private CellContent melt(Appraisal appraisal, int row) {
    FineContent content = appraisal.content();
    Optional<BigDecimal> result = melt.result(content);
    boolean openAtNothing = appraisal.state() == RowState.SEVERAL && !content.hasPrecious();
    if (result.isEmpty()) {
      return openAtNothing ? new CellContent.Number(BigDecimal.ZERO) : CellContent.EMPTY;
    }
    if (!formulas) {
      return new CellContent.Number(result.get());
    }
    String standardCell = CellPlace.letters(places.get(CalculatedColumn.STANDARD)) + (row + 1);
    String formula =
        called
            .flatMap(call -> call.formula(appraisal, standardCell, result.get()))
            .orElseGet(() -> melt.ofCells(content, ounceCells(content, row)));
    return CellContent.Formula.number(formula, result.get());
  }

  private Map<Metal, String> ounceCells(FineContent content, int row) {
    Map<Metal, String> cells = new EnumMap<>(Metal.class);
    for (Metal metal : content.masses().keySet()) {
      if (metal.isPrecious()) {
        cells.put(metal, CellPlace.letters(places.get(CalculatedColumn.ounces(metal))) + (row + 1));
      }
    }
    return cells;
  }

  /** Rounded like every amount in a cell, without trailing zeros. */
  private BigDecimal atCell(BigDecimal amount) {
    return Decimals.normal(Amounts.atCell(BigMoney.of(worths.currency(), amount)).getAmount());
  }

  /**
   * Metal or face value follows the melt cell and so the spot price; the collector's own price does
   * not.
   */
  private CellContent worth(ReadRow read, int row) {
    Optional<Worth> worth = worths.of(read);
    if (worth.isEmpty()) {
      return CellContent.EMPTY;
    }
    BigDecimal amount = worth.get().atCell().getAmount();
    FineContent content = read.appraisal().content();
    boolean follows =
        formulas
            && melt.result(content).isPresent()
            && (worth.get().basis() == Basis.METAL || worth.get().basis() == Basis.FACE);
    if (!follows) {
      return new CellContent.Number(amount);
    }
    String meltCell = CellPlace.letters(places.get(CalculatedColumn.MELT)) + (row + 1);
    String metal = worths.paidFormula(read, ounceCells(content, row)).orElse(meltCell);
    Optional<BigDecimal> face = worths.face(read).map(this::atCell);
    String formula =
        face.isPresent() ? "MAX(" + metal + "," + face.get().toPlainString() + ")" : metal;
    return CellContent.Formula.number(formula, amount);
  }

  private CellContent atMost(Appraisal appraisal) {
    if (appraisal.state() != RowState.SEVERAL) {
      return CellContent.EMPTY;
    }
    FineContent content = appraisal.mostContent();
    Optional<BigDecimal> result = melt.result(content);
    if (result.isEmpty()) {
      return CellContent.EMPTY;
    }
    return formulas
        ? CellContent.Formula.number(melt.ofConstants(content), result.get())
        : new CellContent.Number(result.get());
  }

  private List<String> notes(Appraisal appraisal) {
    List<String> notes = new ArrayList<>(appraisal.notes());
    if (!sayHome) {
      notes.removeIf(note -> note.startsWith("No country is named"));
    }
    Set<Metal> missing = new java.util.TreeSet<>(spot.prices().missingFor(appraisal.content()));
    for (Metal metal : missing) {
      notes.add("No price of " + metal.word() + " was given, so the row has no melt.");
    }
    return notes;
  }

  private static CellContent text(String text) {
    return text.isEmpty() ? CellContent.EMPTY : new CellContent.Text(shortened(text));
  }

  /** A cell holds 32,767 characters at most. */
  private static String shortened(String text) {
    return text.length() <= 2000 ? text : text.substring(0, 1999) + "…";
  }

  private static CellContent number(Optional<BigDecimal> number) {
    return number.isPresent()
        ? new CellContent.Number(MeltFormula.ounces(number.get()))
        : CellContent.EMPTY;
  }
}
