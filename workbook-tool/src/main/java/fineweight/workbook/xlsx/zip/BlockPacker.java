package fineweight.workbook.xlsx.zip;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import org.apache.commons.io.output.UnsynchronizedByteArrayOutputStream;

/**
 * Packs every so many-th block of a content, so that several can share the work. Every block ends
 * at a whole byte and knows the end of the one before, so that the packed blocks one behind the
 * other are one stream, always the same for the same content.
 */
final class BlockPacker {
  private static final int PIECES = 4;
  private static final int WINDOW = 1 << 15;
  private static final byte[] NOTHING = new byte[0];

  private final int turn;
  private final int turns;
  private final Deflater deflater;
  private final byte[] buffer = new byte[1 << 14];
  private final List<byte[]> blocks = new ArrayList<>();
  private UnsynchronizedByteArrayOutputStream block;

  /**
   * @param turn which blocks are this one's, from 0
   * @param turns how many there are to share
   */
  BlockPacker(int turn, int turns, int level) {
    this.turn = turn;
    this.turns = turns;
    deflater = new Deflater(level, true);
  }

  /** Takes all pieces; all but the last are of the same size. */
  void pack(PieceQueue pieces) throws IOException {
    try {
      byte[] before = null;
      int number = 0;
      for (byte[] next = pieces.take(); next != null; next = pieces.take()) {
        if (number / PIECES % turns == turn) {
          if (number % PIECES == 0) {
            begin(before);
          }
          add(next);
          if (number % PIECES == PIECES - 1) {
            end();
          }
        }
        before = next;
        number++;
      }
      if (block != null) {
        end();
      }
    } finally {
      deflater.end();
    }
  }

  private void begin(byte[] before) {
    block = UnsynchronizedByteArrayOutputStream.builder().setBufferSize(1 << 16).get();
    deflater.reset();
    if (before != null) {
      deflater.setDictionary(before, before.length - WINDOW, WINDOW);
    }
  }

  private void add(byte[] piece) {
    deflater.setInput(piece);
    while (!deflater.needsInput()) {
      block.write(buffer, 0, deflater.deflate(buffer, 0, buffer.length, Deflater.NO_FLUSH));
    }
  }

  private void end() {
    deflater.setInput(NOTHING);
    int n;
    do {
      n = deflater.deflate(buffer, 0, buffer.length, Deflater.SYNC_FLUSH);
      block.write(buffer, 0, n);
    } while (n == buffer.length);
    blocks.add(block.toByteArray());
    block = null;
  }

  /** The packed blocks of this one's turns, in their order. */
  List<byte[]> blocks() {
    return blocks;
  }
}
