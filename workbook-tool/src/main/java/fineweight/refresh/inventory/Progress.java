package fineweight.refresh.inventory;

/**
 * Is told how far a run has come. It is called for every row, from one thread, and must be quick.
 */
public interface Progress {
  /** Nobody wants to know. */
  Progress UNSEEN = (stage, row, last) -> {};

  /** What a run is at. */
  enum Stage {
    /** Rows are read and valued. */
    READING,
    /** Cells are compared and written, perhaps in several passes over the rows. */
    WRITING
  }

  /**
   * @param row the row just done, from 0
   * @param last the last row that there is, from 0; 0 if that is not known
   */
  void at(Stage stage, int row, int last);
}
