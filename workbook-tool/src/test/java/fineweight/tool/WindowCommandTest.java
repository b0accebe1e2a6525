package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.GraphicsEnvironment;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

class WindowCommandTest {
  @Test
  void aMachineWithoutAScreenGetsOneSentence() {
    Assumptions.assumeTrue(GraphicsEnvironment.isHeadless(), "there is a screen here");
    Told told = Told.by("window");
    assertThat(told.code()).isEqualTo(ExitCode.NO_SCREEN.code());
    assertThat(told.err().lines()).hasSize(1);
    assertThat(told.err()).contains("no screen", "fineweight refresh");
  }

  @Test
  void itsOptionsAreCheckedFirst() {
    assertThat(Told.by("window", "--home", "Nowhere").code()).isEqualTo(ExitCode.USAGE.code());
  }
}
