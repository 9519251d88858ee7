package ribband.cli;

import picocli.CommandLine.Option;

/** The option of every listing. */
final class FormatOption {
  @Option(
      names = "--format",
      paramLabel = "HOW",
      defaultValue = "table",
      order = 80,
      description = Format.NAMES)
  private String format;

  /**
   * How to print.
   *
   * @throws Refusal where it is no format
   */
  Format read() {
    return Format.read(format);
  }
}
