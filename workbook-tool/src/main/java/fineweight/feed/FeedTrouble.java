package fineweight.feed;

/** Why an answer cannot be used, in words that complete "the address ...". */
final class FeedTrouble extends Exception {
  private static final long serialVersionUID = 1L;

  private final boolean again;

  /**
   * @param again whether another attempt may help
   */
  FeedTrouble(String words, boolean again) {
    super(words);
    this.again = again;
  }

  boolean mayPass() {
    return again;
  }
}
