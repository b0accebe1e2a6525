package fineweight.clue.passage;

import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.Phrases;
import fineweight.clue.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Finds the phrases of the word lists in a row of words. */
final class Phrasing {
  /** Remarks in whose phrases a metal is no metal: "silver jubilee", "German silver". */
  private static final Set<String> MUTED =
      Set.of("metal-name", "not-silver", "not-gold", "size-word");

  private final List<Word> words;
  private final Lexicon lexicon;

  Phrasing(List<Word> words, Lexicon lexicon) {
    this.words = words;
    this.lexicon = lexicon;
  }

  /** The longest phrases from left to right, and the coins named inside some of them. */
  List<Hit> phrases() {
    List<Hit> hits = new ArrayList<>();
    for (Hit hit : longest(lexicon.phrases())) {
      hits.add(hit);
      if (mayHoldCoin(hit)) {
        coinInside(hit, hits);
      }
    }
    return hits;
  }

  /** Names of metals and fineness, but for those in names such as "silver jubilee". */
  List<Hit> metals(List<Hit> phrases) {
    boolean[] muted = muted(phrases);
    return longest(lexicon.metals()).stream().filter(hit -> !muted[hit.at()]).toList();
  }

  /** The words in whose phrases a metal is no metal. */
  private boolean[] muted(List<Hit> phrases) {
    boolean[] muted = new boolean[words.size()];
    for (Hit hit : phrases) {
      boolean notMetal = MUTED.stream().anyMatch(hit::isMark);
      for (int i = hit.at(); i < hit.end() && notMetal; i++) {
        muted[i] = true;
      }
    }
    return muted;
  }

  private List<Hit> longest(Phrases<Meaning> phrases) {
    List<Hit> found = new ArrayList<>();
    int at = 0;
    while (at < words.size()) {
      Phrases.Found<Meaning> phrase = phrases.longestAt(words, at);
      if (phrase == null || splitsNumber(at, phrase.length())) {
        at++;
      } else {
        found.add(new Hit(at, phrase.length(), phrase.meanings()));
        at += phrase.length();
      }
    }
    return found;
  }

  /** In "2 1/2 gulden" no phrase may begin at the 1. */
  private boolean splitsNumber(int at, int length) {
    boolean afterNumber = at > 0 && words.get(at).isNumber() && words.get(at - 1).isNumber();
    return afterNumber && length > 1 && words.get(at + 1).is("/");
  }

  /** "hawaii quarter" holds a coin that the whole phrase does not name. */
  private static boolean mayHoldCoin(Hit hit) {
    return hit.length() > 1 && hit.isMark("design") && !hit.has(Meaning.Coin.class);
  }

  private void coinInside(Hit outer, List<Hit> into) {
    List<Word> inside = words.subList(0, outer.end());
    for (int i = outer.at(); i < outer.end(); i++) {
      Phrases.Found<Meaning> found = lexicon.phrases().longestAt(inside, i);
      if (found != null && found.length() < outer.length()) {
        List<Meaning> coins =
            found.meanings().stream().filter(m -> m instanceof Meaning.Coin).toList();
        if (!coins.isEmpty()) {
          into.add(new Hit(i, found.length(), coins));
          return;
        }
      }
    }
  }
}
