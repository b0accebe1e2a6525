package fineweight.workbook.xlsx.zip;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PackedPartTest {
  private static final int BLOCK = 4 * PieceQueue.PIECE;

  /** Something between a sheet, which repeats itself, and noise. */
  private static byte[] content(long seed, int length) {
    Random random = new Random(seed);
    byte[] bytes = new byte[length];
    for (int i = 0; i < length; i++) {
      bytes[i] = (byte) (i > 300 && random.nextInt(9) > 0 ? bytes[i - 300] : random.nextInt(256));
    }
    return bytes;
  }

  private static PackedPart packed(byte[] content) throws Exception {
    return PackedPart.of(out -> out.write(content), 6, List.of());
  }

  private static byte[] unpacked(PackedPart part) throws Exception {
    try (InputStream in = new InflaterInputStream(part.content(), new Inflater(true))) {
      return in.readAllBytes();
    }
  }

  private static void assertComesBack(byte[] content) throws Exception {
    PackedPart part = packed(content);
    CRC32 checksum = new CRC32();
    checksum.update(content);
    assertThat(unpacked(part)).isEqualTo(content);
    assertThat(part.checksum()).isEqualTo(checksum.getValue());
    assertThat(part.size()).isEqualTo(content.length);
    assertThat(part.packedSize()).isEqualTo(part.content().readAllBytes().length);
  }

  @Property(tries = 100)
  void whatIsPackedComesBack(@ForAll long seed, @ForAll @IntRange(max = 5 * BLOCK) int length)
      throws Exception {
    assertComesBack(content(seed, length));
  }

  @ParameterizedTest
  @ValueSource(
      ints = {0, 1, PieceQueue.PIECE, BLOCK - 1, BLOCK, BLOCK + 1, 2 * BLOCK, 3 * BLOCK, 4 * BLOCK})
  void whatEndsWhereABlockEndsComesBack(int length) throws Exception {
    assertComesBack(content(length, length));
  }

  @Property(tries = 20)
  void theSameContentGivesTheSameBytes(@ForAll long seed) throws Exception {
    byte[] content = content(seed, 3 * BLOCK + 12_345);
    assertThat(packed(content).content().readAllBytes())
        .isEqualTo(packed(content).content().readAllBytes());
  }
}
