/**
 * Commands. Enters: arguments and the {@link ribband.cli.Surroundings}. Leaves: lines on the two
 * streams and an {@link ribband.cli.ExitCode}. One class for each command, thin: options in, the
 * work called, its outcome printed. Start at {@link ribband.cli.Ribband}.
 */
package ribband.cli;
