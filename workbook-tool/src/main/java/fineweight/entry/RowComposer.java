package fineweight.entry;

import fineweight.clue.Clues;
import fineweight.clue.Dating;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.column.Appraisal;
import fineweight.column.Appraiser;
import fineweight.column.FoundTable;
import fineweight.column.InputColumn;
import fineweight.column.RowText;
import fineweight.column.Rows;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.metal.Metal;
import fineweight.standard.Issue;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Lays the words of a piece out in a sheet's own columns. The words stand in one cell as they were
 * typed; year, mint mark, denomination and the like are put into their columns beside it only if
 * the row then reads back as exactly what the words alone mean.
 */
final class RowComposer {
  /** Where words may stand, the best place first. */
  private static final List<InputColumn> WORDS =
      List.of(
          InputColumn.DESCRIPTION,
          InputColumn.NOTES,
          InputColumn.VARIETY,
          InputColumn.TYPE,
          InputColumn.DENOMINATION);

  /** Which columns are filled beside the words, the fullest first. */
  private static final List<Set<InputColumn>> FURTHER =
      List.of(
          Set.of(
              InputColumn.YEAR,
              InputColumn.MINT,
              InputColumn.COUNT,
              InputColumn.GRADE,
              InputColumn.DENOMINATION,
              InputColumn.TYPE),
          Set.of(InputColumn.YEAR, InputColumn.MINT, InputColumn.COUNT, InputColumn.DENOMINATION),
          Set.of(InputColumn.YEAR, InputColumn.MINT, InputColumn.COUNT),
          Set.of(InputColumn.COUNT),
          Set.of());

  private final FoundTable table;
  private final Appraiser appraiser;
  private final Set<Integer> notOurs;

  /**
   * @param notOurs columns that are not to be written into
   */
  RowComposer(FoundTable table, Appraiser appraiser, Set<Integer> notOurs) {
    this.table = table;
    this.appraiser = appraiser;
    this.notOurs = notOurs;
  }

  /**
   * A row laid out.
   *
   * @param texts by column
   * @param readsTheSame whether it reads back as what the words alone mean
   */
  record Composed(Map<Integer, String> texts, boolean readsTheSame) {}

  /** The row for the words; empty if no column takes words. */
  Optional<Composed> compose(String words) {
    Appraisal meant = appraiser.appraise(List.of(new Field(FieldRole.DESCRIPTION, words)));
    Map<InputColumn, String> parts = parts(meant);
    List<Integer> places = new ArrayList<>();
    WORDS.forEach(column -> table.all(column).stream().limit(1).forEach(places::add));
    places.removeAll(notOurs);
    for (int place : places) {
      for (Set<InputColumn> further : FURTHER) {
        Map<Integer, String> texts = texts(place, words, parts, further);
        if (isSame(meant, texts)) {
          return Optional.of(new Composed(texts, true));
        }
      }
    }
    return places.stream().findFirst().map(place -> new Composed(Map.of(place, words), false));
  }

  private Map<Integer, String> texts(
      int place, String words, Map<InputColumn, String> parts, Set<InputColumn> further) {
    Map<Integer, String> texts = new HashMap<>();
    for (InputColumn column : further) {
      Optional<Integer> own = table.first(column).filter(each -> !notOurs.contains(each));
      String part = parts.getOrDefault(column, "");
      if (own.isPresent() && !part.isEmpty()) {
        texts.put(own.get(), part);
      }
    }
    texts.put(place, words);
    return texts;
  }

  private static Map<InputColumn, String> parts(Appraisal meant) {
    Clues clues = meant.clues();
    Map<InputColumn, String> parts = new EnumMap<>(InputColumn.class);
    boolean dated =
        clues.dating().kind() == Dating.Kind.YEARS && clues.dating().years().size() == 1;
    if (dated) {
      parts.put(InputColumn.YEAR, clues.dating().years().get(0).toString());
    }
    clues.mint().ifPresent(mint -> parts.put(InputColumn.MINT, mint.value()));
    clues.condition().grade().ifPresent(grade -> parts.put(InputColumn.GRADE, grade.words()));
    meant.pieces().ifPresent(pieces -> parts.put(InputColumn.COUNT, pieces.toString()));
    if (meant.identification() instanceof OneStandard one) {
      Issue issue = one.standard().issue();
      parts.put(InputColumn.DENOMINATION, issue.denomination());
      issue.types().stream().findFirst().ifPresent(type -> parts.put(InputColumn.TYPE, type));
    }
    return parts;
  }

  private boolean isSame(Appraisal meant, Map<Integer, String> texts) {
    RowText row = new RowText(table.headerRow() + 1, texts);
    if (!Rows.isCoin(row, table)) {
      return false;
    }
    Appraisal read = appraiser.appraise(Rows.fields(row, table));
    boolean sameContent = true;
    for (Metal metal : Metal.values()) {
      sameContent &=
          read.figures()
                  .content()
                  .troyOunces(metal)
                  .compareTo(meant.figures().content().troyOunces(metal))
              == 0;
    }
    return sameContent
        && !Rows.isHeading(row, table, read)
        && read.state() == meant.state()
        && read.pieces().equals(meant.pieces())
        && candidates(read).equals(candidates(meant));
  }

  private static List<String> candidates(Appraisal appraisal) {
    if (appraisal.identification() instanceof SeveralStandards several) {
      return several.candidates().stream().map(each -> each.standard().id()).sorted().toList();
    }
    return List.of(appraisal.figures().standardId());
  }
}
