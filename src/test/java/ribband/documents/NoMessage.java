package ribband.documents;

import java.util.Set;

/** Words in the sources of messages that are none, or that no journal brings about. */
final class NoMessage {
  private NoMessage() {}

  static final Set<String> WORDS =
      Set.of(
          // What the parser of YAML says, in its own words.
          "'%' that cannot start",
          "'@' that cannot start",
          "'`' that cannot start",
          "but found ','",
          "mapping keys are not allowed",
          "sequence entries are not allowed",
          "block scalar",
          "expected the node content",
          "end of stream",
          "mapping values are not allowed",
          "simple key",
          "expected '<document start>'",
          "<document start>",
          "expected <block end>",
          "mapping values",
          // What the JDK says of a JPEG, and a brand of films.
          "JFIF markers not allowed in JFIF JPEG thumbnail; ignored",
          "Warning: unknown JFIF revision number .*",
          "Unknown Adobe color transform code .*",
          "Corrupt JPEG data: (\\d{1,9}) extraneous bytes before marker 0xd9",
          " rows of ",
          "crx ",
          // Names of units, and how amounts are shown.
          "cubic in",
          "cubic inches",
          "cu in",
          "sq mm",
          "sq cm",
          "sq m",
          "sq in",
          "sq ft",
          "sq yd",
          "board foot",
          "board ft",
          " went out",
          "any currency",
          "proven ",
          // Parts of a page.
          "Footnote ",
          "Back to the text, note ",
          ", use ",
          "Table ",
          // No key of a journal asks for these; a command of the shop does.
          "12 board feet",
          ", and a volume belongs here",
          // There is always a key, and a job that waits is one to name.
          "there are no keys here",
          "note the job it waits for first",
          // The file was refused before, as larger than that.
          "the text is longer than 1 MiB; split the entry into several");
}
