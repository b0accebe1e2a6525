package fineweight.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Takes files that are dropped or pasted; everything else goes where it went before. */
final class FileDrop extends TransferHandler {
  private static final long serialVersionUID = 1L;

  private final transient TransferHandler former;
  private final transient Consumer<List<Path>> taker;

  private FileDrop(TransferHandler former, Consumer<List<Path>> taker) {
    this.former = former;
    this.taker = taker;
  }

  /** Lets files be dropped anywhere on a component. */
  static void on(JComponent whole, Consumer<List<Path>> taker) {
    whole.setTransferHandler(new FileDrop(whole.getTransferHandler(), taker));
    within(whole, taker);
  }

  private static void within(Container container, Consumer<List<Path>> taker) {
    for (Component each : container.getComponents()) {
      if (each instanceof JComponent part && part.getTransferHandler() != null) {
        part.setTransferHandler(new FileDrop(part.getTransferHandler(), taker));
      }
      if (each instanceof Container inner) {
        within(inner, taker);
      }
    }
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
        || (former != null && former.canImport(support));
  }

  @Override
  public boolean importData(TransferSupport support) {
    if (!support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
      return former != null && former.importData(support);
    }
    try {
      Object files = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      taker.accept(((List<?>) files).stream().flatMap(FileDrop::path).toList());
      return true;
    } catch (IOException | UnsupportedFlavorException withdrawn) {
      return false;
    }
  }

  private static Stream<Path> path(Object file) {
    return file instanceof File each ? Stream.of(each.toPath()) : Stream.empty();
  }

  @Override
  public void exportToClipboard(JComponent from, Clipboard clipboard, int action) {
    if (former != null) {
      former.exportToClipboard(from, clipboard, action);
    }
  }
}
