package ribband.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program: hands arguments to the commands, and ends every run with an exit code. */
final class Ribband {
  private final Surroundings around;

  Ribband(Surroundings around) {
    this.around = around;
  }

  /** Runs one command; the {@link ExitCode}. */
  int run(String... arguments) {
    Failures failures = new Failures(around, version());
    int code;
    try {
      code = commandLine(failures, List.of(arguments)).execute(arguments);
    } catch (Error e) {
      // The library hands on exceptions alone; a stack that ran over is told no worse.
      code = failures.tell(e, List.of(arguments));
    }
    around.err().flush();
    if (around.out().checkError() && code == ExitCode.DONE) {
      around.err().println("ribband: standard output cannot be written to; is the disk full?");
      around.err().flush();
      return ExitCode.SURROUNDINGS;
    }
    return code;
  }

  /** Every command with its options, for what is written about them. */
  static CommandSpec model() {
    Surroundings around = Surroundings.ofThisMachine();
    return new Ribband(around)
        .commandLine(new Failures(around, version()), List.of())
        .getCommandSpec();
  }

  private CommandLine commandLine(Failures failures, List<String> arguments) {
    CommandLine all = new CommandLine(new Root());
    commands(arguments.isEmpty() ? "" : arguments.get(0))
        .forEach((name, command) -> all.addSubcommand(name, command.get()));
    all.getCommandSpec().version(version());
    return all.setOut(around.out())
        .setErr(around.err())
        .setColorScheme(Help.defaultColorScheme(around.wantsColor() ? Ansi.ON : Ansi.OFF))
        // A folder may be called @boat.
        .setExpandAtFiles(false)
        .setParameterExceptionHandler(new UsageErrors())
        .setExecutionExceptionHandler(
            (failure, command, parsed) -> failures.tell(failure, parsed.originalArgs()));
  }

  /**
   * To read a command's options takes time: where one is named first, or none, only that is read.
   */
  private Map<String, Supplier<Object>> commands(String first) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("lay", () -> new LayCommand(around));
    commands.put("tonight", () -> new TonightCommand(around));
    commands.put("bring", () -> new BringCommand(around));
    commands.put("check", () -> new CheckCommand(around));
    commands.put("publish", () -> new PublishCommand(around, version()));
    commands.put("watch", () -> new WatchCommand(around, version()));
    commands.put("tally", () -> new TallyCommand(around));
    commands.put("recap", () -> new RecapCommand(around));
    commands.put("joints", () -> new JointsCommand(around));
    commands.put("stock", () -> new StockCommand(around));
    commands.put("ahead", () -> new AheadCommand(around));
    commands.put("mix", () -> new MixCommand(around));
    commands.put("boards", () -> new BoardsCommand(around));
    commands.put("papers", () -> new PapersCommand(around, version()));
    if (commands.containsKey(first)) {
      commands.keySet().retainAll(Set.of(first));
    } else if (first.equals("--version")) {
      commands.clear();
    }
    return commands;
  }

  private static String version() {
    return "ribband " + Version.NUMBER + ", Java " + System.getProperty("java.version");
  }

  /** What is shown where no command is named. */
  @Command(
      name = "ribband",
      header = "Dated notes of a boat build become exact totals and a site",
      synopsisHeading = "%nType     ",
      customSynopsis = "ribband COMMAND [options]",
      commandListHeading = "%nCommands%n",
      optionListHeading = "%nOptions%n",
      sortOptions = false,
      footerHeading = "%n",
      footer = {
        "Each command tells more of itself: ribband tally --help",
        "Exit codes: 0 done, 1 the journal has errors, 2 wrong usage, 3 disk, permission,",
        "lock or locale, 70 a defect of ribband. NO_COLOR and FORCE_COLOR are honored."
      })
  private static final class Root implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Option(
        names = {"-h", "--help"},
        usageHelp = true,
        description = "tell this and stop")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "tell the version and stop")
    private boolean version;

    @Override
    public Integer call() {
      spec.commandLine().usage(spec.commandLine().getErr());
      return ExitCode.WRONG_USAGE;
    }
  }
}
