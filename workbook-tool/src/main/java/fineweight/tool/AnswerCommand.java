package fineweight.tool;

import fineweight.refresh.OpenQuestion;
import fineweight.refresh.OpenQuestions;
import fineweight.refresh.Refresh;
import fineweight.refresh.RefreshReport;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.column.MoneyCells;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.settings.SettingException;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "answer",
    description = {
      "Go through the open questions of a refreshed workbook one by one on the terminal.",
      "Each answer stays with its piece for ever; the workbook is refreshed at the end."
    })
final class AnswerCommand implements Callable<Integer> {
  private final Surroundings surroundings;
  private final BufferedReader typed;

  @Parameters(paramLabel = "WORKBOOK", description = "A workbook that was refreshed before.")
  private Path file;

  @Mixin private PriceOptions prices;

  @Option(
      names = "--fill-protected",
      description = "Fill a sheet that is protected against changes too; its protection is kept.")
  private boolean fillProtected;

  @Mixin private CatalogueOptions catalogue;

  /**
   * @param typed what the person types
   */
  AnswerCommand(Surroundings surroundings, BufferedReader typed) {
    this.surroundings = surroundings;
    this.typed = typed;
  }

  @Override
  public Integer call() throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    PrintWriter out = surroundings.out();
    Optional<List<OpenQuestion>> questions;
    try (Workbook workbook = surroundings.workbooks().open(file)) {
      questions = OpenQuestions.read(workbook);
    }
    if (questions.isEmpty()) {
      out.println("There is no list of open questions in " + file + ". Run refresh on it first.");
      return ExitCode.DONE.code();
    }
    Map<String, String> answers = ask(questions.get());
    if (answers.isEmpty()) {
      out.println("No answer was given; the file was not written.");
      return ExitCode.DONE.code();
    }
    try (Workbook workbook = surroundings.workbooks().open(file)) {
      RefreshReport report = Refresh.run(workbook, wishes(answers));
      new ReportWords(out).print(report, false);
    }
    return ExitCode.DONE.code();
  }

  private Map<String, String> ask(List<OpenQuestion> questions) throws IOException {
    PrintWriter out = surroundings.out();
    Map<String, String> answers = new LinkedHashMap<>();
    for (OpenQuestion question : questions) {
      out.println();
      out.println(question.row() + ": " + question.words());
      out.println("  " + question.question());
      for (int i = 0; i < question.choices().size(); i++) {
        out.println("  " + (i + 1) + "  " + question.choices().get(i).words());
      }
      out.print("  Number of the answer, Enter for later, q to stop: ");
      out.flush();
      Optional<Integer> chosen = chosen(question.choices().size());
      if (chosen.isEmpty()) {
        break;
      }
      if (chosen.get() > 0) {
        answers.put(question.piece(), question.choices().get(chosen.get() - 1).standardId());
      }
    }
    out.println();
    return answers;
  }

  /** The number typed; 0 for later; empty to stop. */
  private Optional<Integer> chosen(int most) throws IOException {
    while (true) {
      String line = typed.readLine();
      if (line == null || line.strip().equalsIgnoreCase("q")) {
        return Optional.empty();
      }
      if (line.isBlank()) {
        return Optional.of(0);
      }
      if (line.strip().matches("[0-9]{1,3}")) {
        int number = Integer.parseInt(line.strip());
        if (number >= 1 && number <= most) {
          return Optional.of(number);
        }
      }
      surroundings.out().print("  Type a number from 1 to " + most + ", Enter or q: ");
      surroundings.out().flush();
    }
  }

  private RefreshWishes wishes(Map<String, String> answers) throws SettingException {
    return new RefreshWishes(
        prices.prices(surroundings.today(), surroundings.err()::println),
        prices.currencyGiven(),
        prices.wear(),
        Optional.empty(),
        MoneyCells.LIVE_FORMULAS,
        false,
        fillProtected,
        catalogue.standards(),
        catalogue.home(),
        surroundings.latestYear(),
        answers,
        RefreshWishes.Further.NOTHING);
  }
}
