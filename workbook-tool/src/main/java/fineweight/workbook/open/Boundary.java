package fineweight.workbook.open;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

/**
 * Where any failure of a library over a file becomes one refusal. A failure of the caller's own, in
 * what he hands in to be called back, passes through as it is.
 */
final class Boundary {
  private final Path file;

  Boundary(Path file) {
    this.file = file;
  }

  /** Work on the file. */
  interface Work<T> {
    T run() throws WorkbookRefusal;
  }

  <T> T guard(Work<T> work) throws WorkbookRefusal {
    try {
      return work.run();
    } catch (OutOfMemoryError e) {
      throw refusal(
          "%s needs more memory than this program may use: split it into smaller workbooks.", e);
    } catch (RuntimeException | StackOverflowError e) {
      throwIfCallers(e);
      throw refusal(
          "%s is damaged or built in a way that cannot be read safely: open it in your office, save"
              + " it anew and run again.",
          e);
    }
  }

  private WorkbookRefusal refusal(String sentence, Throwable cause) {
    return new WorkbookRefusal(Kind.DAMAGED, sentence.formatted(file.getFileName()), cause);
  }

  private static void throwIfCallers(Throwable failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof CallersFailure callers) {
        throw callers.failure;
      }
    }
  }

  static <T> Consumer<T> marked(Consumer<T> callback) {
    return value -> {
      try {
        callback.accept(value);
      } catch (RuntimeException e) {
        throw new CallersFailure(e);
      }
    };
  }

  static <T> IntFunction<T> marked(IntFunction<T> callback) {
    return value -> {
      try {
        return callback.apply(value);
      } catch (RuntimeException e) {
        throw new CallersFailure(e);
      }
    };
  }

  static IntPredicate marked(IntPredicate callback) {
    return value -> {
      try {
        return callback.test(value);
      } catch (RuntimeException e) {
        throw new CallersFailure(e);
      }
    };
  }

  /** Marks a failure that is not the library's. */
  private static final class CallersFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final RuntimeException failure;

    CallersFailure(RuntimeException failure) {
      super(failure);
      this.failure = failure;
    }
  }
}
