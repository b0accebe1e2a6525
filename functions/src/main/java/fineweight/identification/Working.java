package fineweight.identification;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * The standards still open while the clues of one row are weighed, and what has been said on the
 * way.
 */
final class Working {
  private List<Profile> open;
  private final List<String> decidedBy = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  Working(List<Profile> open) {
    this.open = List.copyOf(open);
  }

  List<Profile> open() {
    return open;
  }

  boolean isEmpty() {
    return open.isEmpty();
  }

  void set(List<Profile> profiles) {
    open = List.copyOf(profiles);
  }

  /**
   * Keeps the standards that agree.
   *
   * @param because the sentence for the reasons, noted only if it narrowed
   * @return false if none agrees; nothing has changed then
   */
  boolean narrow(Predicate<Profile> agrees, String because) {
    List<Profile> kept = open.stream().filter(agrees).toList();
    if (kept.isEmpty()) {
      return false;
    }
    if (kept.size() < open.size()) {
      open = kept;
      decidedBy.add(because);
    }
    return true;
  }

  void remark(String sentence) {
    if (!remarks.contains(sentence)) {
      remarks.add(sentence);
    }
  }

  void decided(String sentence) {
    decidedBy.add(sentence);
  }

  Reasons reasons(List<String> notUnderstood) {
    return new Reasons(decidedBy, remarks, notUnderstood);
  }
}
