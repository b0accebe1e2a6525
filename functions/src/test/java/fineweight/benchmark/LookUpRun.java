package fineweight.benchmark;

import fineweight.clue.lexicon.Lexicon;
import fineweight.identification.CoinIdentifier;
import fineweight.standard.Standards;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Not part of the tests: measures the look-up and the memory of the loaded catalogue when it is
 * asked for by name.
 */
class LookUpRun {
  @Test
  void measure() throws RunnerException {
    long before = used();
    Standards standards = Standards.catalogue();
    long catalogue = used() - before;
    CoinIdentifier identifier = new CoinIdentifier(standards, Lexicon.standard(), "US", 2027);
    long all = used() - before;
    System.out.println(
        "catalogue of " + standards.all().size() + " standards: " + catalogue / 1024 + " KiB");
    System.out.println("with word lists and index: " + all / 1024 + " KiB");
    // Read once more, so that it is still held while memory is measured.
    java.util.Objects.requireNonNull(identifier, "identifier");
    new Runner(
            new OptionsBuilder()
                .include(LookUp.class.getName())
                .forks(1)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(1))
                .build())
        .run();
  }

  private static long used() {
    for (int i = 0; i < 5; i++) {
      System.gc();
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
