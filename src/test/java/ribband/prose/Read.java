package ribband.prose;

import java.util.List;
import java.util.Optional;
import ribband.problem.Problem;
import ribband.problem.Problems;

/** One text read and shown, for tests: its HTML, its mentions and its problems as lines. */
record Read(Manuscript manuscript, String html, List<String> problems) {
  private static final Prose PROSE = new Prose();

  /** Entries become pages, pictures prints; names with {@code gone} have neither. */
  static final Surroundings SITE =
      new Surroundings() {
        @Override
        public Optional<String> href(Mention link) {
          return found(link).map(path -> path.replace(".md", ".html"));
        }

        @Override
        public Optional<Print> print(Mention picture) {
          return found(picture)
              .map(path -> new Print("s/" + path, "", "", "l/" + path, 48, 32, "", ""));
        }

        private Optional<String> found(Mention mention) {
          return Optional.of(mention.path()).filter(path -> !path.contains("gone"));
        }
      };

  static Read of(String text) {
    return of(text, 1);
  }

  static Read of(String text, int firstLine) {
    Problems problems = new Problems();
    Manuscript manuscript = PROSE.read(new Body("e.md", firstLine, text), problems);
    List<String> lines = problems.sorted().stream().map(Problem::toString).toList();
    return new Read(manuscript, PROSE.html(manuscript, SITE), lines);
  }
}
