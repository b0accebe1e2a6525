package fineweight.tool;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
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
  private final Surroundings surroundings;

  private Main(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  public static void main(String[] args) {
    PrintWriter out = writer(System.out);
    PrintWriter err = writer(System.err);
    int code = run(args, Surroundings.real(out, err));
    out.flush();
    err.flush();
    System.exit(code);
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(stream, true, StandardCharsets.UTF_8);
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
            .addSubcommand(new CommandLine.HelpCommand());
    Map<String, String> codes = new LinkedHashMap<>();
    for (ExitCode code : ExitCode.values()) {
      codes.put(Integer.toString(code.code()), code.meaning());
    }
    command
        .getSubcommands()
        .values()
        .forEach(each -> each.getCommandSpec().mixinStandardHelpOptions(true));
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

  private static int complain(Exception thrown, Surroundings surroundings) {
    Complaint complaint = Complaint.of(thrown);
    surroundings.err().println(complaint.sentence());
    return complaint.code().code();
  }

  private static int complain(ParameterException thrown, PrintWriter err) {
    CommandLine line = thrown.getCommandLine();
    err.println(sentence(thrown.getMessage()));
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
    out.println(
        "  fineweight demo                   a filled workbook of invented coins, to look at");
    out.println(
        "  fineweight my-coins.xlsx          what would be understood in yours; writes nothing");
    out.println("  fineweight starter my-coins.xlsx  a new workbook, if you have none yet");
    out.println("  fineweight explain 1943-P war nickel");
  }
}
