package fineweight.workbook.xlsx.zip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class PieceStreamTest {
  private static final int MUCH = 40 * PieceQueue.PIECE;

  private static byte[] random(long seed, int length) {
    byte[] bytes = new byte[length];
    new Random(seed).nextBytes(bytes);
    return bytes;
  }

  private static Lane copying(String name, ByteArrayOutputStream target) {
    return new Lane(name, pieces -> pieces.transferTo(target));
  }

  /** In time or not at all: a thread that waits for ever fails the test. */
  private static void inTime(org.junit.jupiter.api.function.Executable work) {
    Assertions.assertTimeoutPreemptively(Duration.ofSeconds(30), work);
  }

  @Property(tries = 60)
  void everyThreadGetsEveryByte(
      @ForAll long seed, @ForAll @IntRange(max = 300_000) int length, @ForAll boolean whole) {
    inTime(
        () -> {
          byte[] bytes = random(seed, length);
          ByteArrayOutputStream one = new ByteArrayOutputStream();
          ByteArrayOutputStream other = new ByteArrayOutputStream();
          ByteArrayOutputStream seen = new ByteArrayOutputStream();
          try (PieceStream stream =
              new PieceStream(
                  List.of(copying("one", one), copying("other", other)), seen::writeBytes)) {
            Random sizes = new Random(seed);
            for (int at = 0; at < length; ) {
              int n = whole ? length : Math.min(length - at, sizes.nextInt(70_000));
              stream.write(bytes, at, n);
              at += n;
            }
          }
          assertThat(one.toByteArray()).isEqualTo(bytes);
          assertThat(other.toByteArray()).isEqualTo(bytes);
          assertThat(seen.toByteArray()).isEqualTo(bytes);
        });
  }

  @Test
  void handsOnWhatFailsOnAnotherThread() {
    inTime(
        () -> {
          PieceStream stream =
              new PieceStream(
                  List.of(
                      copying("sound", new ByteArrayOutputStream()),
                      new Lane(
                          "broken",
                          pieces -> {
                            throw new IOException("disk full");
                          })),
                  piece -> {});
          assertThatThrownBy(
                  () -> {
                    stream.write(new byte[MUCH]);
                    stream.close();
                  })
              .isInstanceOf(IOException.class)
              .hasMessage("disk full");
        });
  }

  @Test
  void goesOnForTheOthersWhenOneStopsReading() {
    inTime(
        () -> {
          byte[] bytes = random(1, MUCH);
          ByteArrayOutputStream whole = new ByteArrayOutputStream();
          try (PieceStream stream =
              new PieceStream(
                  List.of(copying("whole", whole), new Lane("idle", pieces -> pieces.read())),
                  piece -> {})) {
            stream.write(bytes);
          }
          assertThat(whole.toByteArray()).isEqualTo(bytes);
        });
  }

  @Property(tries = 60)
  void readingAheadGivesTheSameBytes(
      @ForAll long seed, @ForAll @IntRange(max = 300_000) int length) {
    inTime(
        () -> {
          byte[] bytes = random(seed, length);
          try (InputStream ahead = new AheadStream(new ByteArrayInputStream(bytes))) {
            assertThat(ahead.readAllBytes()).isEqualTo(bytes);
            assertThat(ahead.read()).isEqualTo(-1);
          }
        });
  }

  /** Gives some bytes and fails then. */
  private static InputStream failing(byte[] before, RuntimeException failure) {
    return new SequenceInputStream(
        new ByteArrayInputStream(before),
        new InputStream() {
          @Override
          public int read() {
            throw failure;
          }
        });
  }

  @Test
  void readingAheadFailsBehindTheBytesThatCame() {
    inTime(
        () -> {
          byte[] bytes = random(2, 2 * PieceQueue.PIECE + 17);
          RuntimeException failure = new IllegalStateException("the checksum is wrong");
          try (InputStream ahead = new AheadStream(failing(bytes, failure))) {
            assertThat(ahead.readNBytes(bytes.length)).isEqualTo(bytes);
            assertThatThrownBy(ahead::read).isSameAs(failure);
            assertThatThrownBy(() -> ahead.read(new byte[9])).isSameAs(failure);
          }
        });
  }

  @Test
  void whoeverStopsReadingAheadEndsTheThreadBeforeTheSourceIsClosed() {
    inTime(
        () -> {
          boolean[] readAfterwards = new boolean[1];
          InputStream endless =
              new InputStream() {
                private volatile boolean closed;

                @Override
                public int read() {
                  readAfterwards[0] |= closed;
                  return 'a';
                }

                @Override
                public void close() {
                  closed = true;
                }
              };
          InputStream ahead = new AheadStream(endless);
          assertThat(ahead.read()).isEqualTo('a');
          ahead.close();
          assertThat(readAfterwards[0]).isFalse();
        });
  }
}
