package fineweight.lot;

import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.money.Gain;
import fineweight.valuation.WorthCurve;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * What a lot is worth when spot moves. Every worth is the sum of the rows' figures as the cells
 * would show them. Immutable.
 *
 * @param lines from the lowest spot to the highest
 */
public record SpotTable(List<Line> lines) {
  /** From thirty per cent below today's spot to thirty above, in steps of ten. */
  public static final List<Integer> USUAL_MOVES = List.of(-30, -20, -10, 0, 10, 20, 30);

  /**
   * One spot.
   *
   * @param movePercent how far spot stands from today's, per cent
   * @param worth of the lot
   * @param gain against its cost
   */
  public record Line(int movePercent, Money worth, Gain gain) {}

  public SpotTable {
    lines = List.copyOf(lines);
  }

  /**
   * Values the lot at every move.
   *
   * @param cost of the lot
   * @param rows the curve of each row, made with the spot prices of the day
   * @param moving the metals that move; the others stay at today's spot
   * @param movesPercent how far, in whole per cent, not below -100
   * @throws IllegalArgumentException if a price would fall below zero
   */
  public static SpotTable of(
      Money cost, List<WorthCurve> rows, Set<Metal> moving, List<Integer> movesPercent) {
    List<Line> lines = new ArrayList<>();
    for (int move : movesPercent) {
      if (move < -100) {
        throw new IllegalArgumentException("spot cannot fall by more than 100 per cent: " + move);
      }
      BigDecimal factor = BigDecimal.ONE.add(BigDecimal.valueOf(move, 2));
      Money worth = Money.zero(cost.getCurrencyUnit());
      for (WorthCurve row : rows) {
        worth =
            worth.plus(Amounts.atCell(BigMoney.of(cost.getCurrencyUnit(), row.at(factor, moving))));
      }
      lines.add(new Line(move, worth, Gain.of(worth, cost)));
    }
    return new SpotTable(lines);
  }
}
