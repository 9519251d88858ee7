package ribband.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A journal in text and what reading it must give; read from a Markdown document.
 *
 * <p>Under a heading, a fenced block whose info string ends in a path is a file of the journal;
 * {@code text files} lists files whose content does not matter; {@code text problems} and {@code
 * text figures} hold what must come out; {@code text tree} and {@code text joints} are none of
 * these cases. The first {@code project.yaml} of a document stands in where a heading has none of
 * its own. A row of a table headed {@code written} is one case each: its first cell stands in an
 * entry (or in {@code project.yaml}), its second is what is told or read.
 *
 * @param line where it stands in its document
 * @param source where the case comes from
 * @param files text by path
 * @param problems as they must be told; empty where the case asks for figures alone
 * @param figures as they must be read; empty where the case asks for problems alone
 */
record JournalCase(
    String title,
    int line,
    Source source,
    Map<String, String> files,
    Optional<List<String>> problems,
    Optional<List<String>> figures) {

  /** Blocks give whole lines; rows leave out the file, and may leave out the place. */
  enum Source {
    BLOCKS,
    ROW
  }

  /** The entry that the rows of tables stand in. */
  static final String ENTRY = "2026/2026-03-14-garboard.md";

  private static final Pattern FENCE = Pattern.compile("```(\\w+) (\\S.*)");
  private static final Pattern HEADING = Pattern.compile("#+ (.*)");
  private static final Pattern ROW =
      Pattern.compile("\\| *`(.*?)` *\\| *(?:`(.*?)`|(fine)) *\\|.*");

  static List<JournalCase> of(String document) {
    return new Reader(document).read();
  }

  private static final class Reader {
    private final String[] lines;
    private final List<JournalCase> cases = new ArrayList<>();
    private final Map<String, String> files = new LinkedHashMap<>();
    private String standing = "";
    private String title = "";
    private String table = "";
    private int start;
    private Optional<List<String>> problems = Optional.empty();
    private Optional<List<String>> figures = Optional.empty();

    Reader(String document) {
      this.lines = document.split("\n", -1);
    }

    List<JournalCase> read() {
      for (int at = 0; at < lines.length; at++) {
        Matcher heading = HEADING.matcher(lines[at]);
        Matcher fence = FENCE.matcher(lines[at]);
        if (heading.matches()) {
          close();
          title = heading.group(1);
          start = at + 1;
        } else if (fence.matches()) {
          int end = at + 1;
          while (!lines[end].equals("```")) {
            end++;
          }
          block(fence.group(2), List.of(lines).subList(at + 1, end));
          at = end;
        } else if (lines[at].startsWith("```")) {
          throw new IllegalStateException("line " + (at + 1) + ": a block that no test reads");
        } else if (lines[at].startsWith("|")) {
          row(lines[at], at + 1);
        } else {
          table = "";
        }
      }
      close();
      return cases;
    }

    private void block(String info, List<String> content) {
      switch (info) {
        case "problems" -> problems = Optional.of(content);
        case "figures" -> figures = Optional.of(content);
        case "tree", "joints" -> {}
        case "files" -> content.forEach(file -> files.put(file, ""));
        default -> {
          String text = String.join("\n", content) + "\n";
          files.put(info, text);
          if (info.equals("project.yaml") && standing.isEmpty()) {
            standing = text;
          }
        }
      }
    }

    private void close() {
      if (problems.isPresent() || figures.isPresent()) {
        files.putIfAbsent("project.yaml", standing);
        cases.add(
            new JournalCase(title, start, Source.BLOCKS, Map.copyOf(files), problems, figures));
      } else if (files.keySet().stream().anyMatch(f -> f.endsWith(".md"))) {
        throw new IllegalStateException("line " + start + ": a journal that nothing is asked of");
      }
      files.clear();
      problems = Optional.empty();
      figures = Optional.empty();
    }

    private void row(String line, int number) {
      if (line.startsWith("| written")) {
        table = line.toLowerCase(Locale.ROOT);
        return;
      }
      if (table.isEmpty() || line.startsWith("|-")) {
        return;
      }
      Matcher row = ROW.matcher(line);
      if (!row.matches()) {
        throw new IllegalStateException("line " + number + ": a row that no test reads: " + line);
      }
      String written = row.group(1).replace("<br>", "\n").replace("\\|", "|");
      List<String> told =
          row.group(3) != null
              ? List.of()
              : List.of(row.group(2).replace("\\|", "|").split("<br>", -1));
      boolean ofProject = table.startsWith("| written in project.yaml");
      boolean asksFigures = table.contains("| read as");
      cases.add(
          new JournalCase(
              title + ", line " + number + ": " + row.group(1),
              number,
              Source.ROW,
              ofProject ? Map.of("project.yaml", written + "\n") : entry(written),
              asksFigures ? Optional.empty() : Optional.of(told),
              asksFigures ? Optional.of(told) : Optional.empty()));
    }

    /** The row's text comes first, so that its lines begin with line 2 of the entry. */
    private Map<String, String> entry(String written) {
      String phase = written.startsWith("phase") ? "" : "phase: planking\n";
      Map<String, String> journal = new LinkedHashMap<>(files);
      journal.put("project.yaml", standing);
      journal.put(ENTRY, "---\n" + written + "\n" + phase + "---\n");
      return journal;
    }
  }
}
