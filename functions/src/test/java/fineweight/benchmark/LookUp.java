package fineweight.benchmark;

import fineweight.clue.Clues;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.identification.CoinIdentifier;
import fineweight.identification.Identification;
import fineweight.standard.Standards;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How long one coin takes: reading its words, and finding it in the whole catalogue. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class LookUp {
  /** A plain one, one without a country, one that must ask. */
  @Param({
    "US 1964 quarter dollar Washington",
    "20 francs 1907 gold rooster",
    "1942 Jefferson nickel"
  })
  public String words;

  private ClueReader reader;
  private CoinIdentifier identifier;
  private List<Field> fields;
  private Clues clues;

  @Setup
  public void load() {
    Lexicon lexicon = Lexicon.standard();
    reader = new ClueReader(lexicon);
    identifier = new CoinIdentifier(Standards.catalogue(), lexicon, "US", 2027);
    fields = List.of(new Field(FieldRole.DESCRIPTION, words));
    clues = reader.read(fields);
  }

  @Benchmark
  public Clues readWords() {
    return reader.read(fields);
  }

  @Benchmark
  public Identification findInCatalogue() {
    return identifier.identify(clues);
  }

  @Benchmark
  public Object byId() {
    return Standards.catalogue().byId("us-quarter-1932-1964-washington");
  }
}
