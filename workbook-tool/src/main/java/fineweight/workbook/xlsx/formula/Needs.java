package fineweight.workbook.xlsx.formula;

import java.util.List;
import java.util.Set;

/**
 * All that a formula looks at.
 *
 * @param areas those behind its defined names and table columns included
 * @param names the defined names it uses, known or not, in lower case
 */
record Needs(List<Reference> areas, Set<String> names) {
  static final Needs NONE = new Needs(List.of(), Set.of());

  Needs {
    areas = List.copyOf(areas);
    names = Set.copyOf(names);
  }

  /** What a record has of itself is linked at run time, which slows every start. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Needs needs && areas.equals(needs.areas) && names.equals(needs.names);
  }

  @Override
  public int hashCode() {
    return areas.hashCode() * 31 + names.hashCode();
  }
}
