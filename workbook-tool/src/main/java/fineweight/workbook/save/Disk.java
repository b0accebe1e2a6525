package fineweight.workbook.save;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;

/** The single steps of a save that touch the disk, so that a test can let each of them fail. */
interface Disk {
  InputStream read(Path file) throws IOException;

  /** Creates a file that must not exist yet, readable by nobody else. */
  OutputStream write(Path file) throws IOException;

  /** Returns when what was written to the file, or the names in the folder, are on the disk. */
  void flush(Path fileOrFolder) throws IOException;

  /** Gives a file the permissions, and where possible the group, of another. */
  void copyPermissions(Path from, Path to) throws IOException;

  /** In one step, over whatever has the new name. */
  void rename(Path from, Path to) throws IOException;

  /** Does nothing if the file is absent. */
  void delete(Path file) throws IOException;

  List<Path> list(Path folder) throws IOException;
}
