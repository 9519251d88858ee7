package ribband.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import ribband.problem.Nearest;
import ribband.problem.OneLine;

/** Says what is wrong with a command line, in one line and where to read more. */
final class UsageErrors implements IParameterExceptionHandler {
  @Override
  public int handleParseException(ParameterException failure, String[] arguments) {
    CommandLine command = failure.getCommandLine();
    CommandSpec spec = command.getCommandSpec();
    command.getErr().println("ribband: " + sentence(failure, spec));
    command.getErr().println("how to call it: " + spec.qualifiedName() + " --help");
    return ExitCode.WRONG_USAGE;
  }

  private static String sentence(ParameterException failure, CommandSpec spec) {
    if (failure instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched.getUnmatched().get(0), spec);
    }
    if (failure instanceof MissingParameterException missing) {
      ArgSpec argument = missing.getMissing().get(0);
      String option = argument.isOption() ? ((OptionSpec) argument).longestName() : "";
      return argument.isOption() && !argument.required()
          ? option + " needs a value, " + argument.paramLabel()
          : spec.name()
              + " needs "
              + (option + " " + argument.paramLabel()).strip()
              + ", "
              + argument.description()[0];
    }
    if (failure instanceof OverwrittenOptionException twice) {
      return ((OptionSpec) twice.getOverwritten()).longestName() + " stands twice; keep one";
    }
    if (failure.getArgSpec() instanceof OptionSpec option && option.arity().max() == 0) {
      return option.longestName() + " takes no value; write it alone";
    }
    return OneLine.of(failure.getMessage());
  }

  private static String unmatched(String word, CommandSpec spec) {
    if (word.startsWith("-")) {
      List<String> names = new ArrayList<>();
      spec.options().forEach(option -> names.add(option.longestName()));
      String bare = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
      return "there is no option "
          + OneLine.quote(OneLine.of(bare))
          + Nearest.to(bare, names).map(UsageErrors::near).orElse("");
    }
    String quoted = OneLine.quote(OneLine.of(word));
    if (spec.subcommands().isEmpty()) {
      return quoted + " is one argument too many; put quotes round a name with spaces";
    }
    String hint = Nearest.hint(word, spec.subcommands().keySet(), "");
    return "there is no command " + quoted + "; " + hint;
  }

  private static String near(String name) {
    return "; did you mean " + name + "?";
  }
}
