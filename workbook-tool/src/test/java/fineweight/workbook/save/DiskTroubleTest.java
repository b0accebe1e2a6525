package fineweight.workbook.save;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DiskTroubleTest {
  static Stream<Arguments> troubles() {
    return Stream.of(
        Arguments.of(new IOException("No space left on device"), Kind.FILE, "disk is full"),
        Arguments.of(
            new FileSystemException("x", null, "Disk quota exceeded"), Kind.FILE, "disk is full"),
        Arguments.of(new AccessDeniedException("x"), Kind.FILE, "nothing may be written"),
        Arguments.of(
            new FileSystemException("x", null, "Read-only file system"),
            Kind.FILE,
            "nothing may be written"),
        Arguments.of(new NoSuchFileException("x"), Kind.FILE, "vanished"),
        Arguments.of(
            new FileSystemException(
                "x", null, "The process cannot access the file: being used by another process"),
            Kind.IN_USE,
            "open in another program"),
        Arguments.of(new IOException("Input/output error"), Kind.FILE, "Input/output error"),
        Arguments.of(new IOException(), Kind.FILE, "no reason given"));
  }

  @ParameterizedTest
  @MethodSource("troubles")
  void isSaidInOneSentenceWithARemedy(IOException trouble, Kind kind, String words) {
    WorkbookRefusal refusal = DiskTrouble.refusal(Path.of("folder", "coins.xlsx"), trouble);

    assertThat(refusal.kind()).isEqualTo(kind);
    assertThat(refusal)
        .hasMessageStartingWith("coins.xlsx ")
        .hasMessageContaining(words)
        .hasMessageContaining(": ")
        .hasMessageNotContaining("Exception")
        .hasCause(trouble);
  }
}
