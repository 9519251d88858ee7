package ribband.album;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import ribband.journal.Entry;
import ribband.journal.FileNames;
import ribband.journal.Journal;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Problems;
import ribband.prose.Body;
import ribband.prose.Headings;
import ribband.prose.Mention;
import ribband.prose.Print;
import ribband.prose.Prose;
import ribband.prose.Surroundings;

/** Follows the links between the texts of a journal. May be used by several threads. */
final class EntryLinks {
  private final Journal journal;
  private final Prose prose;
  private final Map<String, Entry> entriesByFile;
  private final Map<String, Headings> headings = new ConcurrentHashMap<>();

  EntryLinks(Journal journal, Prose prose) {
    this.journal = journal;
    this.prose = prose;
    this.entriesByFile =
        journal.entries().stream().collect(Collectors.toMap(Entry::file, Function.identity()));
  }

  static Body body(Entry entry) {
    return new Body(entry.file(), entry.textLine(), entry.text());
  }

  /** The same, but links lead on to the heading they name. */
  Surroundings withHeadings(String from, Surroundings around) {
    return new Surroundings() {
      @Override
      public Optional<String> href(Mention link) {
        return around.href(link).map(page -> page + fragment(from, link));
      }

      @Override
      public Optional<Print> print(Mention picture) {
        return around.print(picture);
      }
    };
  }

  /** spec: a relative link to another journal file that is no entry is a warning and stays text. */
  void check(String from, Mention mention, Problems problems) {
    if (mention.kind() != Mention.Kind.LINK || !mention.isRelative()) {
      return;
    }
    Optional<String> file = FileNames.linked(journal.folder(), from, mention.path());
    if (file.isEmpty()) {
      problems.warning(
          mention.place(),
          "the link to "
              + OneLine.quote(mention.path())
              + " leads to no file of the journal and stays text; "
              + journal
                  .folder()
                  .nearest(mention.path(), List.of(folderOf(from), ""))
                  .map(near -> "did you mean " + OneLine.quote(near) + "?")
                  .orElse("write the name of an entry's file, as 2026-03-14-scarf.md"));
    } else if (!entriesByFile.containsKey(file.get())) {
      problems.warning(
          mention.place(),
          "the link to "
              + OneLine.quote(mention.path())
              + " leads to a file that is no entry, so it is not published and stays text; link to"
              + " an entry or leave the link out");
    } else {
      linkedEntry(from, mention).ifPresent(entry -> checkHeading(entry, mention, problems));
    }
  }

  private void checkHeading(Entry entry, Mention mention, Problems problems) {
    Headings there = headings(entry);
    if (there.id(mention.fragment()).isEmpty()) {
      problems.warning(
          mention.place(),
          "no heading "
              + OneLine.quote(mention.fragment())
              + " in "
              + OneLine.of(entry.file())
              + ", the link leads to its page; "
              + Nearest.hint(mention.fragment(), there.names(), "it has no headings"));
    }
  }

  private String fragment(String from, Mention link) {
    return linkedEntry(from, link)
        .flatMap(entry -> headings(entry).id(link.fragment()))
        .map(id -> "#" + id)
        .orElse("");
  }

  private Optional<Entry> linkedEntry(String from, Mention link) {
    return link.fragment().isEmpty()
        ? Optional.empty()
        : FileNames.linked(journal.folder(), from, link.path()).map(entriesByFile::get);
  }

  /** Few texts are linked to by a heading: only those are read twice. */
  private Headings headings(Entry entry) {
    return headings.computeIfAbsent(
        entry.file(), file -> prose.read(body(entry), new Problems()).headings());
  }

  private static String folderOf(String file) {
    return file.contains("/") ? file.substring(0, file.lastIndexOf('/')) : "";
  }
}
