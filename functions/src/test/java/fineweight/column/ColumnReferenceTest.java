package fineweight.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ColumnReferenceTest {
  /** After a change: run with {@code -Dfineweight.write.docs=true} once, and read the page. */
  @Test
  void thePageIsThatOfTheColumns() throws IOException {
    Path page = Path.of(System.getProperty("fineweight.root", ".."), "docs", "columns.md");
    if (Boolean.getBoolean("fineweight.write.docs")) {
      Files.writeString(page, ColumnReference.markdown());
    }
    assertThat(page).content().isEqualTo(ColumnReference.markdown());
  }

  @Test
  void everyColumnThatIsReadHasAHeading() {
    for (InputColumn column : InputColumn.values()) {
      assertThat(Headings.standard().of(column)).as(column.words()).isNotEmpty();
    }
  }
}
