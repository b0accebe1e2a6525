package fineweight.identification.weighing;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.clue.FieldRole;
import fineweight.clue.MetalWords;
import fineweight.identification.candidate.MetalMatch;
import fineweight.quantity.Fineness;

/** Weighs the words for metal and fineness. */
final class MetalWeighing {
  private final Working working;
  private final boolean mounted;

  private MetalWeighing(Working working, boolean mounted) {
    this.working = working;
    this.mounted = mounted;
  }

  static void weigh(Clues clues, Working working) {
    MetalWords metal = clues.physical().metal();
    MetalWeighing weighing =
        new MetalWeighing(working, clues.condition().mark("mounted").isPresent());
    metal.said().forEach(weighing::said);
    metal.denied().forEach(weighing::denied);
    metal.fineness().ifPresent(weighing::fineness);
  }

  private void said(Clue<String> clue) {
    boolean agrees =
        working.narrow(
            profile -> MetalMatch.metal(profile.standard(), clue.value()),
            "metal \"" + clue.words() + "\"");
    if (!agrees) {
      against(clue.from(), "the words say \"" + clue.words() + "\"");
    }
  }

  private void denied(Clue<String> clue) {
    boolean agrees =
        working.narrow(
            profile -> !MetalMatch.metal(profile.standard(), clue.value()),
            "not \"" + clue.words() + "\"");
    if (!agrees) {
      against(clue.from(), "the words say not \"" + clue.words() + "\"");
    }
  }

  private void fineness(Clue<Fineness> clue) {
    boolean agrees =
        working.narrow(
            profile -> MetalMatch.fineness(profile.standard(), clue.value()),
            "fineness " + clue.words());
    if (!agrees) {
      against(clue.from(), "the words say \"" + clue.words() + "\"");
    }
  }

  /** A remark in the notes may be about something else; the other fields are about the coin. */
  private void against(FieldRole from, String sentence) {
    if (mounted) {
      working.remark(sentence + ", taken to be said of the mount");
    } else if (from == FieldRole.NOTES) {
      working.remark(sentence + ", which does not fit this coin");
    } else {
      working.contradict(sentence);
    }
  }
}
