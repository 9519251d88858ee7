package ribband.documents;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A fenced block of a document.
 *
 * @param line 1-based, where its fence opens
 * @param kind the first word behind the fence
 * @param name the rest of what stands there; may be empty
 * @param content with its last line end
 */
public record Example(Path document, int line, String kind, String name, String content) {
  private static final Pattern FENCE = Pattern.compile("( *)```(.*)");
  private static final Pattern INFO = Pattern.compile("([a-z]+)(?: (\\S.*))?");

  /** Every document of the project that may hold an example. */
  public static List<Path> documents() throws IOException {
    try (Stream<Path> docs = Files.list(Path.of("docs"))) {
      return Stream.concat(
              Stream.of("README.md", "DEVELOPERS.md", "sample-journal/README.md").map(Path::of),
              docs.filter(file -> file.toString().endsWith(".md")).sorted())
          .toList();
    }
  }

  /** All of a document; a block that does not say what it is, is refused. */
  public static List<Example> of(Path document) throws IOException {
    return of(document, Files.readAllLines(document, StandardCharsets.UTF_8));
  }

  static List<Example> of(Path document, List<String> lines) {
    List<Example> examples = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      Matcher fence = FENCE.matcher(lines.get(at));
      if (fence.matches()) {
        int end = at + 1;
        while (!FENCE.matcher(lines.get(end)).matches()) {
          end++;
        }
        Matcher info = INFO.matcher(fence.group(2));
        if (!info.matches()) {
          throw new AssertionError(
              document + ":" + (at + 1) + ": a block that says not what it is");
        }
        int indent = fence.group(1).length();
        StringBuilder content = new StringBuilder();
        lines.subList(at + 1, end).forEach(line -> content.append(cut(line, indent)).append('\n'));
        String name = info.group(2) == null ? "" : info.group(2);
        examples.add(new Example(document, at + 1, info.group(1), name, content.toString()));
        at = end;
      } else if (lines.get(at).startsWith("    ")) {
        throw new AssertionError(document + ":" + (at + 1) + ": an indented block; fence it");
      }
    }
    return examples;
  }

  private static String cut(String line, int indent) {
    return line.substring(Math.min(indent, line.length()));
  }

  /** The lines of a block of commands, each without its comment. */
  public List<String> commands() {
    return content.lines().map(line -> line.replaceFirst(" +# .*", "")).toList();
  }

  @Override
  public String toString() {
    return document + ":" + line + " (" + (kind + " " + name).strip() + ")";
  }
}
