package fineweight.clue.passage;

import fineweight.clue.word.Word;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Sets numbers aside that are neither dates nor counts nor amounts on the coin: what was paid, the
 * label of a box or lot, the number on a holder.
 */
public final class SideNumbers {
  private static final Pattern DATE = Pattern.compile("1[6-9]\\d\\d|20[0-3]\\d");
  private static final Pattern BEFORE_PRICE =
      Pattern.compile("[$£€:=]|for|was|is|at|about|usd|eur|gbp|um|fur|voor|pour");
  private static final Pattern SIGN = Pattern.compile("[$£€]");
  private static final Pattern NUMBER_WORD = Pattern.compile("[#:.]|no|nr|num");

  /** How many words may stand between "paid" and the sum. */
  private static final int REACH = 3;

  /** Remarks whose numbers are part of a name. */
  private static final Set<String> SILENT =
      Set.of("variety", "raw", "certified", "design", "harmless", "privy", "cleaned", "error");

  private final Passage passage;

  private SideNumbers(Passage passage) {
    this.passage = passage;
  }

  /** Takes such numbers, with the money sign before them. */
  public static void setAside(Passage passage) {
    if (passage.role().isText()) {
      SideNumbers setting = new SideNumbers(passage);
      passage.hits().forEach(setting::besides);
      setting.numbered();
    }
  }

  private void besides(Hit hit) {
    if (hit.isMark("price")) {
      if (!sumFollows(hit.end())) {
        sumBefore(hit.at());
      }
    } else if (hit.isMark("series")) {
      labelFollows(hit.end());
    } else if (hit.length() > 1 && SILENT.stream().anyMatch(hit::isMark)) {
      // "type 2" and "2x2" hold no count.
      takeNumbers(hit);
    }
  }

  private void takeNumbers(Hit hit) {
    for (int i = hit.at(); i < hit.end(); i++) {
      if (passage.word(i).isNumber()) {
        passage.take(i, i + 1);
      }
    }
  }

  private boolean sumFollows(int from) {
    for (int i = from; i < from + REACH && i < passage.size(); i++) {
      Word word = passage.word(i);
      if (word.isNumber()) {
        boolean date = DATE.matcher(word.text()).matches() && i > from + 1;
        passage.take(date ? i : from, i + 1);
        return true;
      }
      if (!BEFORE_PRICE.matcher(word.text()).matches()) {
        return false;
      }
    }
    return false;
  }

  /** "$35 paid": only with a money sign. */
  private boolean sumBefore(int at) {
    boolean sum =
        at >= 2
            && passage.word(at - 1).isNumber()
            && SIGN.matcher(passage.word(at - 2).text()).matches();
    if (sum) {
      passage.take(at - 2, at);
    }
    return sum;
  }

  /** "Box 3", "lot no. 14", "item #7". */
  private void labelFollows(int from) {
    int at = from;
    while (at < passage.size() && at < from + REACH && isLabelSign(at)) {
      at++;
    }
    boolean label =
        at < passage.size()
            && passage.word(at).isNumber()
            && !DATE.matcher(passage.word(at).text()).matches();
    if (label) {
      passage.take(from, at + 1);
    }
  }

  private boolean isLabelSign(int at) {
    return NUMBER_WORD.matcher(passage.word(at).text()).matches();
  }

  /** "#77", "no. 1064321-022". */
  private void numbered() {
    for (int i = 0; i + 1 < passage.size(); i++) {
      boolean sign = passage.isSign(i, "#");
      boolean no =
          passage.matches(i, "no|nr|num") && passage.text().startsWith(".", passage.word(i).end());
      if ((sign || no) && passage.word(i + 1).isNumber()) {
        passage.take(i, i + 2);
        takeRest(i + 2);
      }
    }
  }

  /** "#77 of 100", "1064321-022". */
  private void takeRest(int from) {
    boolean goesOn = passage.matches(from, "of|-|/|von|van");
    if (goesOn && passage.at(from + 1).filter(Word::isNumber).isPresent()) {
      passage.take(from, from + 2);
    }
  }
}
