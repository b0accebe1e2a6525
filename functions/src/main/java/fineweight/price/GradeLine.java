package fineweight.price;

import fineweight.grade.Grade;
import fineweight.money.Amounts;
import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.joda.money.BigMoney;

/** The prices of one piece by grade, joined by straight lines. */
final class GradeLine {
  private final TreeMap<Integer, Point> points = new TreeMap<>();
  private final Optional<Point> anyGrade;

  /** The line of the list that counts for one grade, and what was passed over for it. */
  private record Point(ListedPrice line, String note) {
    String words() {
      return Amounts.words(line.each());
    }

    String source() {
      String day = line.asOf().map(LocalDate::toString).orElse("no date");
      return line.origin().isEmpty() ? day : line.origin() + ", " + day;
    }
  }

  GradeLine(List<ListedPrice> lines) {
    Map<Integer, List<ListedPrice>> byGrade = new TreeMap<>();
    for (ListedPrice line : lines) {
      line.grade()
          .ifPresent(
              grade -> byGrade.computeIfAbsent(grade.low(), low -> new ArrayList<>()).add(line));
    }
    byGrade.forEach((grade, same) -> points.put(grade, choose(same)));
    List<ListedPrice> without = lines.stream().filter(line -> line.grade().isEmpty()).toList();
    this.anyGrade = without.isEmpty() ? Optional.empty() : Optional.of(choose(without));
  }

  /** Of lines for the same grade the newest counts; of those of one day, or without, the lowest. */
  private static Point choose(List<ListedPrice> same) {
    ListedPrice chosen =
        same.stream()
            .max(
                Comparator.<ListedPrice, LocalDate>comparing(
                        line -> line.asOf().orElse(LocalDate.MIN))
                    .thenComparing(ListedPrice::each, Comparator.reverseOrder()))
            .orElseThrow();
    boolean differ = same.stream().anyMatch(line -> !line.each().isEqual(chosen.each()));
    return new Point(
        chosen,
        differ
            ? "; " + same.size() + " lines for the same grade, the newest or lowest counts"
            : "");
  }

  PriceAnswer at(Optional<Grade> grade) {
    if (grade.isPresent() && !points.isEmpty()) {
      return atGrade(grade.get());
    }
    if (anyGrade.isPresent()) {
      Point point = anyGrade.get();
      return new PriceAnswer.Found(
          point.line().each(),
          point.line().asOf(),
          "price without regard to grade, " + point.source() + point.note());
    }
    return new PriceAnswer.NotListed("your list goes by grade and the piece has none");
  }

  private PriceAnswer atGrade(Grade grade) {
    int wanted = grade.low();
    Point exact = points.get(wanted);
    if (exact != null) {
      return new PriceAnswer.Found(
          exact.line().each(),
          exact.line().asOf(),
          "price for grade " + wanted + lowEnd(grade) + ", " + exact.source() + exact.note());
    }
    Map.Entry<Integer, Point> below = points.lowerEntry(wanted);
    Map.Entry<Integer, Point> above = points.higherEntry(wanted);
    if (below == null || above == null) {
      return new PriceAnswer.NotListed(
          "your list ends at grade "
              + (below == null ? points.firstKey() : points.lastKey())
              + " and says nothing of "
              + wanted
              + lowEnd(grade));
    }
    return between(grade, below, above);
  }

  private static PriceAnswer between(
      Grade grade, Map.Entry<Integer, Point> below, Map.Entry<Integer, Point> above) {
    BigMoney low = below.getValue().line().each();
    BigMoney high = above.getValue().line().each();
    BigDecimal rise = high.getAmount().subtract(low.getAmount());
    BigDecimal steps = BigDecimal.valueOf(grade.low() - below.getKey());
    BigDecimal all = BigDecimal.valueOf(above.getKey() - below.getKey());
    BigDecimal each = low.getAmount().add(rise.multiply(steps).divide(all, Decimals.DIVISION));
    return new PriceAnswer.Found(
        BigMoney.of(low.getCurrencyUnit(), each),
        older(below.getValue().line().asOf(), above.getValue().line().asOf()),
        "grade "
            + grade.low()
            + lowEnd(grade)
            + " lies between "
            + side(below)
            + " and "
            + side(above)
            + below.getValue().note()
            + above.getValue().note());
  }

  /** The earlier of two days; none where one is not known. */
  private static Optional<LocalDate> older(Optional<LocalDate> one, Optional<LocalDate> other) {
    return one.flatMap(first -> other.map(second -> first.isBefore(second) ? first : second));
  }

  private static String side(Map.Entry<Integer, Point> entry) {
    Point point = entry.getValue();
    return entry.getKey() + " (" + point.words() + ", " + point.source() + ")";
  }

  private static String lowEnd(Grade grade) {
    return grade.isExact() ? "" : ", the low end of " + grade;
  }
}
