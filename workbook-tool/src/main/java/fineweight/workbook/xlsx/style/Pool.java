package fineweight.workbook.xlsx.style;

import fineweight.workbook.xlsx.xml.ByteEdits;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fonts, fills or borders: equal ones are used again, new ones appended. */
final class Pool {
  private final Element list;
  private final Map<String, Integer> known = new HashMap<>();
  private final List<String> added = new ArrayList<>();
  private int count;

  Pool(Markup markup, Optional<Element> list) {
    this.list = list.orElse(null);
    for (Element each : list.map(Element::children).orElse(List.of())) {
      known.putIfAbsent(markup.source(each), count++);
    }
  }

  /** An empty text stands for the first. */
  int index(String xml) {
    if (xml.isEmpty()) {
      return 0;
    }
    return known.computeIfAbsent(
        xml,
        x -> {
          added.add(x);
          return count++;
        });
  }

  void appendTo(ByteEdits edits) {
    if (added.isEmpty()) {
      return;
    }
    if (list == null) {
      throw new DamageException("its styles lack a list of fonts, fills or borders");
    }
    edits.append(list, String.join("", added), "count", Integer.toString(count));
  }
}
