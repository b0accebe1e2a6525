package fineweight.workbook.xlsx.zip;

import fineweight.workbook.WorkbookRefusal;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.zip.CRC32;

/** The packed bytes of a part, with what its entry must say about them. */
final class PackedPart {
  private static final int PACKERS = 2;

  /** A last block with nothing in it, as RFC 1951 has it: fixed codes and the end code alone. */
  private static final byte[] LAST = {3, 0};

  private final List<byte[]> blocks = new ArrayList<>();
  private final CRC32 checksum = new CRC32();
  private long size;
  private long packedSize;

  private PackedPart() {}

  /**
   * Packs on other threads while the content is being made.
   *
   * @param readers each reads the content too, on a thread of its own
   */
  static PackedPart of(PartContent content, int level, List<PartReader> readers)
      throws IOException, WorkbookRefusal {
    PackedPart part = new PackedPart();
    List<BlockPacker> packers = new ArrayList<>();
    List<Lane> lanes = new ArrayList<>();
    for (int turn = 0; turn < PACKERS; turn++) {
      BlockPacker packer = new BlockPacker(turn, PACKERS, level);
      packers.add(packer);
      lanes.add(new Lane("pack", packer::pack));
    }
    readers.forEach(reader -> lanes.add(new Lane("read back", reader::read)));
    try (PieceStream pieces = new PieceStream(lanes, part::see)) {
      content.writeTo(pieces);
    }
    for (int i = 0; i < packers.get(0).blocks().size(); i++) {
      for (BlockPacker packer : packers) {
        if (i < packer.blocks().size()) {
          part.add(packer.blocks().get(i));
        }
      }
    }
    part.add(LAST);
    return part;
  }

  private void see(byte[] piece) {
    checksum.update(piece);
    size += piece.length;
  }

  private void add(byte[] block) {
    blocks.add(block);
    packedSize += block.length;
  }

  long size() {
    return size;
  }

  long packedSize() {
    return packedSize;
  }

  long checksum() {
    return checksum.getValue();
  }

  /** As {@link PackageZip#seal} tells it. */
  String seal() {
    return PackageZip.seal(checksum(), size);
  }

  InputStream content() {
    return new SequenceInputStream(
        Collections.enumeration(blocks.stream().map(ByteArrayInputStream::new).toList()));
  }
}
