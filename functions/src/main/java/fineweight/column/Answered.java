package fineweight.column;

import fineweight.identification.Candidate;
import fineweight.identification.Identification;
import fineweight.identification.Identification.NoStandard;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.identification.Reasons;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes a person's answer where the words leave the standard open. */
final class Answered {
  private Answered() {}

  static Identification by(String answer, Identification found, Standards standards) {
    if (answer.isEmpty() || found instanceof OneStandard) {
      return found;
    }
    if (found instanceof SeveralStandards several) {
      Optional<CoinStandard> chosen =
          several.candidates().stream()
              .map(Candidate::standard)
              .filter(standard -> standard.id().equals(answer))
              .findFirst();
      return chosen.isPresent() ? taken(chosen.get(), found.reasons()) : found;
    }
    boolean open = found instanceof NoStandard none && none.kind() == NoStandard.Kind.NOT_KNOWN;
    Optional<CoinStandard> named = standards.byId(answer);
    return open && named.isPresent() ? taken(named.get(), found.reasons()) : found;
  }

  private static Identification taken(CoinStandard standard, Reasons reasons) {
    List<String> remarks = new ArrayList<>(reasons.remarks());
    remarks.add("as you answered");
    return new OneStandard(
        standard, new Reasons(reasons.decidedBy(), remarks, reasons.notUnderstood()));
  }
}
