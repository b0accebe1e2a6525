package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Coins of one coinage law hold metal in proportion to their face value: a slip in one of them
 * shows against its sisters. Which coins belong to one law is common knowledge of the trade, no
 * source.
 */
class SisterDenominationsTest {
  @Test
  void sistersHoldMetalInProportionToTheirFaceValue() {
    List<String> wrong = new ArrayList<>();
    int sisters = 0;
    for (SisterGroup group : SisterGroup.all()) {
      sisters += group.ids().size();
      wrong.addAll(
          group.outOfProportion(
              id ->
                  Standards.catalogue()
                      .byId(id)
                      .orElseThrow(() -> new AssertionError("no " + id))));
    }
    System.out.println(SisterGroup.all().size() + " coinage laws, " + sisters + " sisters");
    assertThat(wrong).isEmpty();
    assertThat(SisterGroup.all()).hasSizeGreaterThan(120);
  }
}
