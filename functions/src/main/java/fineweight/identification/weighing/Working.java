package fineweight.identification.weighing;

import fineweight.identification.candidate.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The standards still open while the clues of one row are weighed, and what has been said on the
 * way.
 */
public final class Working {
  private List<Profile> open;
  private final List<String> decidedBy = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  /** Null while all agrees. */
  private String contradiction;

  public Working(List<Profile> open) {
    this.open = List.copyOf(open);
  }

  public List<Profile> open() {
    return open;
  }

  public boolean isEmpty() {
    return open.isEmpty();
  }

  public void set(List<Profile> profiles) {
    open = List.copyOf(profiles);
  }

  /**
   * Keeps the standards that agree.
   *
   * @param because the sentence for the reasons, noted only if it narrowed
   * @return false if none agrees; nothing has changed then
   */
  public boolean narrow(Predicate<Profile> agrees, String because) {
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

  public void remark(String sentence) {
    if (!remarks.contains(sentence)) {
      remarks.add(sentence);
    }
  }

  public void decided(String sentence) {
    decidedBy.add(sentence);
  }

  /** Notes that something said contradicts all that is open; the first such sentence counts. */
  public void contradict(String sentence) {
    if (contradiction == null) {
      contradiction = sentence;
    }
  }

  /** What contradicts all that is open. */
  public Optional<String> contradiction() {
    return Optional.ofNullable(contradiction);
  }

  /** The words and figures that decided, as sentences. */
  public List<String> decidedBy() {
    return List.copyOf(decidedBy);
  }

  /** What was assumed or looks odd, as sentences. */
  public List<String> remarks() {
    return List.copyOf(remarks);
  }
}
