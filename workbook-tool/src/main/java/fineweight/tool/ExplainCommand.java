package fineweight.tool;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraisal;
import fineweight.column.Appraiser;
import fineweight.identification.CoinIdentifier;
import fineweight.settings.SettingException;
import fineweight.spot.SpotPrices;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
    name = "explain",
    description = {
      "Explain one coin: what it is, what it holds, the law or mint publication behind the figure, and the computation.",
      "Write it as you would say it: fineweight explain 1943-P war nickel"
    })
final class ExplainCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(arity = "1..*", paramLabel = "WORDS", description = "The coin in your words.")
  private List<String> words;

  @Mixin private PriceOptions prices;

  @Mixin private CatalogueOptions catalogue;

  ExplainCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException {
    SpotPrices spot = prices.prices(surroundings.today(), surroundings.err()::println);
    Lexicon lexicon = Lexicon.standard();
    Appraiser appraiser =
        new Appraiser(
            new ClueReader(lexicon),
            new CoinIdentifier(
                catalogue.standards(), lexicon, catalogue.home(), surroundings.latestYear()),
            spot,
            catalogue.standards());
    Appraisal appraisal =
        appraiser.appraise(List.of(new Field(FieldRole.DESCRIPTION, String.join(" ", words))));
    new Explanation(surroundings.out(), spot, prices.wear().orElse(java.math.BigDecimal.ZERO))
        .print(appraisal);
    return ExitCode.DONE.code();
  }
}
