package fineweight.workbook.xlsx;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.xlsx.xml.DamageException;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.zip.ZipException;

/**
 * The one place where whatever fails while a package is read becomes one sentence for people. What
 * a caller's own function throws goes through unchanged.
 */
final class Boundary {
  /** Something that reads a package. */
  @FunctionalInterface
  interface Work<T> {
    T run() throws IOException, WorkbookRefusal;
  }

  /** Carries what a caller's function threw past the boundary. */
  static final class CallerFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final RuntimeException thrown;

    CallerFailure(RuntimeException thrown) {
      super(thrown);
      this.thrown = thrown;
    }
  }

  private final Path file;

  Boundary(Path file) {
    this.file = file;
  }

  <T> T run(Work<T> work) throws WorkbookRefusal {
    try {
      return work.run();
    } catch (CallerFailure e) {
      throw e.thrown;
    } catch (DamageException e) {
      throw damaged(e.getMessage(), e);
    } catch (ZipException | CharacterCodingException | EOFException e) {
      throw damaged("a part of it cannot be unpacked", e);
    } catch (IOException e) {
      if (hasCause(e, DamageException.class)) {
        throw damaged("a part of it cannot be unpacked", e);
      }
      throw unreadable(e);
    } catch (RuntimeException e) {
      throw damaged("its content does not hold together", e);
    } catch (StackOverflowError | OutOfMemoryError e) {
      throw damaged("it needs more memory than any such workbook should", e);
    }
  }

  /** The same for writing: trouble with the target is left to whoever opened it. */
  <T> T runWriting(Work<T> work) throws IOException, WorkbookRefusal {
    IOException[] target = new IOException[1];
    T result =
        run(
            () -> {
              try {
                return work.run();
              } catch (IOException e) {
                target[0] = e;
                return null;
              }
            });
    if (target[0] != null) {
      throw target[0];
    }
    return result;
  }

  /** What a caller's function throws is marked on its way to the boundary. */
  static <T> Consumer<T> guarded(Consumer<T> consumer) {
    return value -> {
      try {
        consumer.accept(value);
      } catch (RuntimeException e) {
        throw new CallerFailure(e);
      }
    };
  }

  /** What a caller's function throws is marked on its way to the boundary. */
  static <T> IntFunction<T> guarded(IntFunction<T> function) {
    return row -> {
      try {
        return function.apply(row);
      } catch (RuntimeException e) {
        throw new CallerFailure(e);
      }
    };
  }

  private static boolean hasCause(Throwable thrown, Class<?> kind) {
    for (Throwable t = thrown; t != null; t = t.getCause()) {
      if (kind.isInstance(t)) {
        return true;
      }
    }
    return false;
  }

  private WorkbookRefusal unreadable(IOException e) {
    return new WorkbookRefusal(
        Kind.FILE, "The file %s cannot be read or written (%s).".formatted(name(), words(e)), e);
  }

  private static String words(IOException e) {
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }

  private String name() {
    return String.valueOf(file.getFileName());
  }

  private WorkbookRefusal damaged(String what, Throwable cause) {
    return new WorkbookRefusal(
        Kind.DAMAGED,
        "The file %s is damaged or not a workbook: %s. Open it in your office program and save it anew, or take a backup."
            .formatted(name(), what),
        cause);
  }
}
