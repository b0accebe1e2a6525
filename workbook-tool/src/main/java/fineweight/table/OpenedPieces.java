package fineweight.table;

import fineweight.table.TableJournal.Entry;
import fineweight.table.TableJournal.Kind;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The pieces of a lot in the order in which they were opened, backed by a journal. */
public final class OpenedPieces {
  private final TableJournal journal;
  private final TreeMap<Integer, String> pieces = new TreeMap<>();
  private final Map<Kind, String> about = new TreeMap<>();

  /** Takes up what the journal holds. */
  public OpenedPieces(TableJournal journal) {
    this.journal = journal;
    journal.entries().forEach(this::apply);
  }

  private void apply(Entry entry) {
    switch (entry.kind()) {
      case ADD -> pieces.putIfAbsent(entry.number(), entry.words());
      case CORRECT -> pieces.replace(entry.number(), entry.words());
      case REMOVE -> pieces.remove(entry.number());
      default -> about.put(entry.kind(), entry.words());
    }
  }

  private void record(Entry entry) throws IOException {
    journal.append(entry);
    apply(entry);
  }

  /**
   * @return the number of the new piece
   */
  public int add(String words) throws IOException {
    int number = pieces.isEmpty() ? 1 : pieces.lastKey() + 1;
    record(new Entry(Kind.ADD, number, words));
    return number;
  }

  /**
   * @return false if there is no piece of that number
   */
  public boolean correct(int number, String words) throws IOException {
    if (!pieces.containsKey(number)) {
      return false;
    }
    record(new Entry(Kind.CORRECT, number, words));
    return true;
  }

  /**
   * Takes the last piece back.
   *
   * @return its words; empty if there is none
   */
  public Optional<String> removeLast() throws IOException {
    if (pieces.isEmpty()) {
      return Optional.empty();
    }
    int last = pieces.lastKey();
    String words = pieces.get(last);
    record(new Entry(Kind.REMOVE, last, ""));
    return Optional.of(words);
  }

  /** Says something of the whole lot: its name, its cost, the file of its list. */
  public void say(Kind kind, String words) throws IOException {
    if (!words.equals(about.get(kind))) {
      record(new Entry(kind, 0, words));
    }
  }

  /** Where the pieces are about to be kept; other places are forgotten. */
  public void keepIn(Kind place, String words) throws IOException {
    for (Kind other : List.of(Kind.LIST, Kind.ROWS, Kind.SHEET)) {
      if (other != place && !said(other).isEmpty()) {
        say(other, "");
      }
    }
    say(place, words);
  }

  /** What was said of the whole lot; empty text if nothing. */
  public String said(Kind kind) {
    return about.getOrDefault(kind, "");
  }

  /** The words of each piece by its number. */
  public SortedMap<Integer, String> all() {
    return Collections.unmodifiableSortedMap(pieces);
  }

  /** Forgets the journal, because the list keeps the pieces now. */
  public void settled() throws IOException {
    journal.delete();
  }
}
