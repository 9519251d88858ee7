package ribband.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import ribband.joints.JointsCalendar;
import ribband.press.LoneFile;
import ribband.problem.OneLine;

/** The file that a calendar is written to. */
final class CalendarFile {
  /** Far longer than any calendar of ours. */
  private static final long LONGEST = 64L << 20;

  private CalendarFile() {}

  /**
   * Writes it, whole or not at all.
   *
   * @param typed its name, from where the builder stands
   * @throws Refusal where something else stands there, or no folder for it
   * @throws IOException where the disk fails
   */
  static void write(Surroundings around, String typed, byte[] content) throws IOException {
    Path file = around.path(typed);
    String shown = OneLine.of(typed);
    if (Files.isDirectory(file)) {
      throw Refusal.surroundings("cannot write " + shown + ": it is a folder; name a file in it");
    }
    if (!Files.isDirectory(file.toAbsolutePath().getParent())) {
      throw Refusal.surroundings(
          "cannot write " + shown + ": its folder is not there; make the folder first");
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isOurs(file)) {
      throw Refusal.wrongUsage(
          shown + " is no calendar that ribband wrote and stays as it is; name another file");
    }
    LoneFile.write(Files.exists(file) ? file.toRealPath() : file, content);
  }

  private static boolean isOurs(Path file) throws IOException {
    return Files.isRegularFile(file)
        && Files.size(file) <= LONGEST
        && JointsCalendar.isOurs(Files.readAllBytes(file));
  }
}
