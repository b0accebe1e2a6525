package fineweight.workbook.xlsx.xml;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Edits of a small part, made in one go; all other bytes are copied. */
public final class ByteEdits {
  private record Edit(int from, int to, String text) {}

  private final Markup markup;
  private final List<Edit> edits = new ArrayList<>();

  public ByteEdits(Markup markup) {
    this.markup = markup;
  }

  public boolean isEmpty() {
    return edits.isEmpty();
  }

  public void insertBefore(Element element, String xml) {
    edits.add(new Edit(element.start(), element.start(), xml));
  }

  public void insertAfter(Element element, String xml) {
    edits.add(new Edit(element.after(), element.after(), xml));
  }

  public void remove(Element element) {
    edits.add(new Edit(element.start(), element.after(), ""));
  }

  public void replace(Element element, String xml) {
    edits.add(new Edit(element.start(), element.after(), xml));
  }

  /** Puts children at the end of an element and sets one attribute of it (null for none). */
  public void append(Element parent, String xml, String attribute, String value) {
    String tag = StartTag.text(markup.bytes(), parent.start(), parent.tagEnd());
    String changed = attribute == null ? tag : StartTag.with(tag, attribute, value);
    if (parent.empty()) {
      String whole = StartTag.opened(changed) + xml + "</" + parent.tag() + ">";
      edits.add(new Edit(parent.start(), parent.tagEnd(), whole));
      return;
    }
    if (!changed.equals(tag)) {
      edits.add(new Edit(parent.start(), parent.tagEnd(), changed));
    }
    edits.add(new Edit(parent.contentEnd(), parent.contentEnd(), xml));
  }

  public void append(Element parent, String xml) {
    append(parent, xml, null, null);
  }

  /** At most one such edit for an element, and none beside {@link #append} for the same. */
  public void setAttribute(Element element, String attribute, String value) {
    String tag = StartTag.text(markup.bytes(), element.start(), element.tagEnd());
    String changed =
        value == null ? StartTag.without(tag, attribute) : StartTag.with(tag, attribute, value);
    if (!changed.equals(tag)) {
      edits.add(new Edit(element.start(), element.tagEnd(), changed));
    }
  }

  public byte[] apply() {
    byte[] bytes = markup.bytes();
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + 1024);
    edits.sort(Comparator.comparingInt(Edit::from));
    int copied = 0;
    for (Edit edit : edits) {
      if (edit.from < copied) {
        throw new IllegalStateException("edits overlap in " + markup.part());
      }
      out.write(bytes, copied, edit.from - copied);
      out.writeBytes(edit.text.getBytes(StandardCharsets.UTF_8));
      copied = edit.to;
    }
    out.write(bytes, copied, bytes.length - copied);
    return out.toByteArray();
  }
}
