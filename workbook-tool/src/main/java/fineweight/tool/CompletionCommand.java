package fineweight.tool;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
    name = "completion",
    description = {
      "Print what makes bash and zsh complete commands and options.",
      "Put this line into ~/.bashrc: source <(fineweight completion)"
    })
final class CompletionCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Spec private CommandSpec spec;

  CompletionCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    surroundings.screen().keepLinesWhole();
    surroundings.out().print(AutoComplete.bash(spec.root().name(), spec.root().commandLine()));
    surroundings.out().flush();
    return ExitCode.DONE.code();
  }
}
