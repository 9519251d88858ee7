package ribband.cli;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page, told from the commands themselves as their help is. */
final class ManualPage {
  private static final Map<String, String> ENVIRONMENT = environment();

  private final Roff page = new Roff();
  private final CommandSpec root;
  private final List<CommandSpec> commands;
  private final List<OptionSpec> shared;

  private ManualPage(CommandSpec root) {
    this.root = root;
    this.commands = root.subcommands().values().stream().map(CommandLine::getCommandSpec).toList();
    this.shared =
        commands.get(0).options().stream()
            .filter(option -> commands.stream().allMatch(command -> has(command, option)))
            .toList();
  }

  /**
   * The page's text.
   *
   * @param root the program with all its commands
   * @param day the one it is dated
   */
  static String of(CommandSpec root, LocalDate day) {
    return new ManualPage(root).written(day);
  }

  private String written(LocalDate day) {
    page.title("RIBBAND", "1", day.toString(), "ribband " + Version.NUMBER, "Ribband");
    page.section("NAME").text(root.name() + " - " + words(root.usageMessage().header()));
    page.section("SYNOPSIS").text(words(root.usageMessage().customSynopsis()));
    page.section("DESCRIPTION")
        .text(
            "A journal is a folder of plain text: a project.yaml, and a file for each night of"
                + " work, named by its date. Ribband reads it and never changes or deletes a file"
                + " in it; only lay, tonight and bring add files.");
    page.section("COMMANDS");
    commands.forEach(this::command);
    page.section("OPTIONS").text("Every command takes these as well:");
    shared.forEach(this::option);
    page.paragraph().text("Without a command:");
    root.options().forEach(this::option);
    page.section("ENVIRONMENT");
    ENVIRONMENT.forEach((name, meaning) -> page.entry(name, "", meaning));
    page.section("FILES");
    page.entry("project.yaml", "", "what is built: its name, phases, plan, materials");
    page.entry("2026/2026-03-14-garboard.md", "", "an entry; its folder may have any name");
    page.entry("site/", "", "what publish makes");
    page.entry(".ribband/", "", "what is remembered between runs; it may be deleted at any time");
    page.section("EXIT STATUS");
    page.entry("0", "", "done");
    page.entry("1", "", "the journal has errors; no figure is printed and nothing is published");
    page.entry("2", "", "wrong usage");
    page.entry("3", "", "disk, permission, lock or locale");
    page.entry("70", "", "a defect of ribband");
    page.section("CAUTIONS")
        .text(
            "What is told of resin, cure and coats is reckoned from what you wrote down. The"
                + " maker's data sheet, local rules and licensed practice govern.");
    return page.toString();
  }

  private void command(CommandSpec command) {
    page.subsection(synopsis(command));
    page.text(words(command.usageMessage().header()) + ".");
    for (String paragraph : command.usageMessage().description()) {
      // The program may part its paragraphs by empty ones.
      if (!paragraph.isBlank()) {
        page.paragraph().text(words(paragraph));
      }
    }
    command
        .positionalParameters()
        .forEach(place -> page.entry("", place.paramLabel(), described(place)));
    command.options().stream()
        .filter(option -> !shared.stream().anyMatch(common -> same(common, option)))
        .forEach(this::option);
    page.verbatim(Stream.of(command.usageMessage().footer()).map(ManualPage::words).toList());
  }

  private static String synopsis(CommandSpec command) {
    StringBuilder synopsis = new StringBuilder(command.name());
    for (PositionalParamSpec place : command.positionalParameters()) {
      boolean optional = place.arity().min() == 0;
      synopsis.append(optional ? " [" : " ").append(place.paramLabel()).append(optional ? "]" : "");
    }
    return synopsis.append(" [options]").toString();
  }

  private void option(OptionSpec option) {
    boolean valued = option.arity().max() > 0;
    page.entry(
        String.join(", ", option.names()) + (valued ? "=" : ""),
        valued ? option.paramLabel() : "",
        described(option));
  }

  private static String described(ArgSpec argument) {
    return String.join(" ", argument.description());
  }

  /**
   * What the library would print of a command, in which the ends of lines and percent signs are
   * codes.
   */
  private static String words(String... lines) {
    return String.join(" ", lines)
        .replace("%n", " ")
        .replace("%%", "%")
        .replace('\n', ' ')
        .stripTrailing();
  }

  private static boolean has(CommandSpec command, OptionSpec option) {
    return command.options().stream().anyMatch(other -> same(other, option));
  }

  private static boolean same(OptionSpec one, OptionSpec other) {
    return List.of(one.names()).equals(List.of(other.names()))
        && described(one).equals(described(other));
  }

  private static Map<String, String> environment() {
    Map<String, String> variables = new LinkedHashMap<>();
    variables.put("VISUAL, EDITOR", "the editor that tonight opens");
    variables.put("NO_COLOR, FORCE_COLOR", "no colors, or colors also where no person watches");
    variables.put(
        "RIBBAND_HEAP",
        "how much memory pictures may take, as 2g; 640m if not set, which is enough but for very"
            + " large ones");
    variables.put("JAVA_HOME", "the Java to run with, where Ribband was installed without its own");
    return variables;
  }
}
