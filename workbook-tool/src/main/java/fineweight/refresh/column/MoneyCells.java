package fineweight.refresh.column;

/** What the calculated money cells of an inventory hold; the stored figure is the same in each. */
public enum MoneyCells {
  /** Formulas that every office calculates with nothing installed. */
  LIVE_FORMULAS,

  /** The figures alone. */
  VALUES,

  /** Calls of the add-in's functions where they come to the same figure, else live formulas. */
  ADD_IN_FORMULAS
}
