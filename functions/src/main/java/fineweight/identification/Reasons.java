package fineweight.identification;

import java.util.List;

/**
 * Why an answer is what it is. Immutable.
 *
 * @param decidedBy the words and figures that decided, as sentences
 * @param remarks what was assumed or looks odd, as sentences
 * @param notUnderstood words that no rule took, as written
 */
public record Reasons(List<String> decidedBy, List<String> remarks, List<String> notUnderstood) {
  public Reasons {
    decidedBy = List.copyOf(decidedBy);
    remarks = List.copyOf(remarks);
    notUnderstood = List.copyOf(notUnderstood);
  }
}
