package fineweight.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class SheetFunctionReferenceTest {
  /** After a change: run with {@code -Dfineweight.write.docs=true} once, and read the page. */
  @Test
  void thePageIsThatOfTheList() throws IOException {
    Path page = Path.of(System.getProperty("fineweight.root", ".."), "docs", "functions.md");
    if (Boolean.getBoolean("fineweight.write.docs")) {
      Files.writeString(page, SheetFunctionReference.markdown());
    }
    assertThat(page).content().isEqualTo(SheetFunctionReference.markdown());
  }

  @Test
  void everyFunctionIsDescribed() {
    SheetFunctions.all()
        .forEach(
            function ->
                assertThat(SheetFunctionReference.markdown())
                    .contains("## " + function.name() + "\n")
                    .contains(function.texts().purpose()));
  }
}
