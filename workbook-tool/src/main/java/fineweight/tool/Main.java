package fineweight.tool;

import fineweight.terminal.Screen;
import fineweight.terminal.Terminal;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Ansi.Style;
import picocli.CommandLine.Help.ColorScheme;
import picocli.CommandLine.ParameterException;

/** The program's entry. */
@Command(
    name = "fineweight",
    mixinStandardHelpOptions = true,
    version = "fineweight 0.1.0-SNAPSHOT",
    description = {
      "What metal is in each coin of a collection, and what is it worth at today's spot?",
      "Fills the calculated columns of your own inventory workbook and changes nothing else in it."
    },
    synopsisSubcommandLabel = "COMMAND")
public final class Main implements Runnable {
  /** Narrower than this, the library lays out no help. */
  private static final int LEAST_WIDTH = 55;

  private static final int MOST_WIDTH = 80;

  private final Surroundings surroundings;

  private Main(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  public static void main(String[] args) {
    Charset letters = Terminal.letters();
    Screen screen = Screen.ofThisProcess();
    PrintWriter out = screen.results(System.out, letters);
    PrintWriter err = Screen.complaints(System.err, letters);
    int code = run(args, Surroundings.real(out, err, screen));
    out.flush();
    err.flush();
    System.exit(code);
  }

  /** Runs one command and tells the exit code. */
  static int run(String[] args, Surroundings surroundings) {
    CommandLine command = commandLine(surroundings);
    return WorkbookAlone.isMeant(args, command.getSubcommands().keySet())
        ? new WorkbookAlone(args).run(command, surroundings)
        : command.execute(args);
  }

  static CommandLine commandLine(Surroundings surroundings) {
    CommandLine command =
        new CommandLine(new Main(surroundings))
            .addSubcommand(new RefreshCommand(surroundings))
            .addSubcommand(new ExplainCommand(surroundings))
            .addSubcommand(
                new AnswerCommand(
                    surroundings,
                    new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()))))
            .addSubcommand(new SplitCommand(surroundings))
            .addSubcommand(new TakeOutCommand(surroundings))
            .addSubcommand(new RestoreCommand(surroundings))
            .addSubcommand(new TableCommand(surroundings))
            .addSubcommand(new BidCommand(surroundings))
            .addSubcommand(new WeighCommand(surroundings))
            .addSubcommand(new LabelsCommand(surroundings))
            .addSubcommand(new StarterCommand(surroundings))
            .addSubcommand(new GiveAwayCommand(surroundings))
            .addSubcommand(new DemoCommand(surroundings))
            .addSubcommand(new WindowCommand(surroundings))
            .addSubcommand(new CompletionCommand(surroundings))
            .addSubcommand(new CommandLine.HelpCommand());
    Map<String, String> codes = new LinkedHashMap<>();
    for (ExitCode code : ExitCode.values()) {
      codes.put(Integer.toString(code.code()), code.meaning());
    }
    command
        .getSubcommands()
        .values()
        .forEach(
            each -> {
              each.getCommandSpec().mixinStandardHelpOptions(true);
              each.getCommandSpec()
                  .usageMessage()
                  .footer("%nExit codes: 0 done; fineweight --help tells the others.");
            });
    command.setHelpFactory(
        (spec, given) -> {
          Screen screen = surroundings.screen();
          spec.usageMessage().width(Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, screen.width())));
          return new CommandLine.Help(spec, looks(screen.isColoured()));
        });
    command.setOut(surroundings.out());
    command.setErr(surroundings.err());
    command
        .getCommandSpec()
        .usageMessage()
        .exitCodeListHeading("Exit codes:%n")
        .exitCodeList(codes);
    command.setExecutionExceptionHandler((thrown, line, parsed) -> complain(thrown, surroundings));
    command.setParameterExceptionHandler((thrown, args) -> complain(thrown, surroundings.err()));
    return command;
  }

  /** Names set off by weight, not by colour, which not everybody sees. */
  private static ColorScheme looks(boolean coloured) {
    return new ColorScheme.Builder(coloured ? Ansi.ON : Ansi.OFF)
        .commands(Style.bold)
        .options(Style.bold)
        .parameters(Style.underline)
        .build();
  }

  private static int complain(Exception thrown, Surroundings surroundings) {
    Complaint complaint = Complaint.of(thrown);
    surroundings.err().println(complaint.sentence());
    return complaint.code().code();
  }

  private static int complain(ParameterException thrown, PrintWriter err) {
    CommandLine line = thrown.getCommandLine();
    boolean noCommand =
        line.getParent() == null
            && thrown instanceof CommandLine.UnmatchedArgumentException unmatched
            && !unmatched.isUnknownOption();
    err.println(
        noCommand
            ? "There is no command or file "
                + ((CommandLine.UnmatchedArgumentException) thrown).getUnmatched().get(0)
                + "."
            : sentence(thrown.getMessage()));
    CommandLine.UnmatchedArgumentException.printSuggestions(thrown, err);
    err.println("See: " + line.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.USAGE.code();
  }

  /** The words with a full stop, unless they end in a mark already. */
  static String sentence(String words) {
    return words.matches("(?s).*[.?!]$") ? words : words + ".";
  }

  /** The bare command says what there is to do next. */
  @Override
  public void run() {
    commandLine(surroundings).usage(surroundings.out());
    PrintWriter out = surroundings.out();
    out.println();
    out.println("Where to begin:");
    out.println("  fineweight demo                   a filled workbook of invented coins");
    out.println("  fineweight my-coins.xlsx          what is understood in yours; writes nothing");
    out.println("  fineweight window                 the same without typing commands");
    out.println("  fineweight starter my-coins.xlsx  a new workbook, if you have none yet");
    out.println("  fineweight explain 1943-P war nickel");
  }
}
