package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.photo.Camera;

/**
 * The week of {@code docs/nightly.md}, block by block: commands are run at their moments and tell
 * what stands below them, an edited file is written, another one must be as it is shown.
 */
class NightlyDocumentTest {
  private static final Path DOCUMENT = Path.of("docs/nightly.md");
  private static final Pattern BLOCK =
      Pattern.compile("(?m)^```(\\S+) ([^\\n]+)\\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final String COMMAND = "$ ribband ";
  private static final String EDITED = " edited";

  @TempDir Path temporary;
  private Path yard;

  @Test
  void theWeekIsAsItIsTold() throws Exception {
    yard = temporary.toRealPath();
    String document = Files.readString(DOCUMENT, StandardCharsets.UTF_8);
    int commands = 0;
    for (Matcher block = BLOCK.matcher(document); block.find(); ) {
      if (block.group(1).equals("console")) {
        commands++;
      }
      run(block.group(1), block.group(2), block.group(3));
    }
    assertEquals(document.split("\n\\$ ", -1).length - 1, commands);
  }

  private void run(String kind, String name, String content) throws Exception {
    if (name.equals("watch")) {
      watch(content);
    } else if (kind.equals("console")) {
      command(name, content);
    } else if (name.equals("card")) {
      card(content);
    } else if (kind.equals("csv")) {
      new InMemory(yard).with(name, content);
    } else if (name.endsWith(EDITED)) {
      new InMemory(boat()).with(name.substring(0, name.length() - EDITED.length()), content);
    } else {
      assertEquals(content, Files.readString(boat().resolve(name)), name);
    }
  }

  private Path boat() {
    return yard.resolve("dunlin");
  }

  /** Both streams go to one terminal. */
  private void command(String moment, String content) {
    int end = content.indexOf('\n');
    String line = content.substring(COMMAND.length(), end);
    StringWriter told = new StringWriter();
    Surroundings terminal = new InMemory(yard).at(moment).surroundings(told, told);
    int code = new Ribband(terminal).run(words(line));
    assertEquals(content.substring(end + 1), told.toString(), line);
    assertEquals(0, code, line);
  }

  private static String[] words(String line) {
    return WORD.matcher(line)
        .results()
        .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
        .toArray(String[]::new);
  }

  private void card(String content) throws IOException {
    for (String line : content.split("\n")) {
      String[] file = line.split("  ");
      Path path = yard.resolve("card/DCIM").resolve(file[0]);
      if (file[0].endsWith(".JPG")) {
        int width = Integer.parseInt(file[0].substring(6, 8));
        Camera.shoot(path, width, 20, 1, file[1].replace('-', ':') + ":00");
      } else {
        Files.createDirectories(path.getParent());
        Files.write(path, HexFormat.of().parseHex(head(file[0])));
      }
    }
  }

  /** The boxes that such files begin with (ISO 14496-12, 4.3). */
  private static String head(String name) {
    return name.endsWith(".HEIC")
        ? "0000001866747970686569630000000068656963"
        : "00000018667479706d703432000000006d703432";
  }

  /** The saves that the text tells of; files and words are compared, and times are not. */
  private void watch(String content) throws Exception {
    Path entry = boat().resolve("2026/2026-03-13-planking.md");
    String first = Files.readString(entry).replace("title:", "title: Third strake up");
    try (WatchRun watch = new WatchRun(yard, "dunlin")) {
      watch.published(1);
      WatchRun.save(entry, first + "Hung by eye, then by the batten.\n");
      watch.published(2);
      WatchRun.save(entry, first.replace("0:40", "0;40"));
      watch.said("the site stays as it is");
      WatchRun.save(entry, first + "Hung by eye, then by the batten, then again.\n");
      watch.published(3);
      String told = timeless(content.substring(content.indexOf('\n') + 1));
      for (String stream : new String[] {watch.out(), watch.err()}) {
        for (String line : timeless(stream).split("\n")) {
          assertTrue(told.contains(line + "\n"), line);
        }
      }
      assertEquals(told.lines().count(), lines(watch.out()) + lines(watch.err()));
    }
  }

  private static long lines(String stream) {
    return Stream.of(stream.split("\n")).count();
  }

  private static String timeless(String told) {
    return told.replaceAll("[0-9]{2}:[0-9]{2}:[0-9]{2}  ", "at  ")
        .replaceAll("in [0-9]+\\.[0-9] s", "in a while")
        .replaceAll(":[0-9]+/\n", ":PORT/\n");
  }
}
