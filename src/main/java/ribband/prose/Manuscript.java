package ribband.prose;

import com.vladsch.flexmark.util.ast.Document;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A parsed text: what it mentions and says; {@link Prose#html} shows it. */
public final class Manuscript {
  private final String file;
  private final Optional<Document> document;
  private final Findings findings;
  private final List<Mention> mentions;

  Manuscript(String file, Document document, Findings findings) {
    this.file = file;
    this.document = Optional.of(document);
    this.findings = findings;
    mentions = List.copyOf(findings.mentions);
  }

  private Manuscript(String file) {
    this.file = file;
    document = Optional.empty();
    findings = new Findings();
    mentions = List.of();
  }

  /** What stands in for a text that could not be read. */
  static Manuscript blank(String file) {
    return new Manuscript(file);
  }

  /**
   * The links and pictures of the text as it is shown, notes last; without those that were dropped
   * with a problem.
   */
  public List<Mention> mentions() {
    return mentions;
  }

  /** Its headings, for links from elsewhere. */
  public Headings headings() {
    return findings.headings;
  }

  /** The plain words, one line a paragraph, heading, list item, table row or piece of code. */
  public String words() {
    return document.map(Words::blocks).map(lines -> String.join("\n", lines)).orElse("");
  }

  /**
   * The first of those words, parted by one space.
   *
   * @param atMost how many words
   */
  public String firstWords(int atMost) {
    return words()
        .lines()
        .flatMap(line -> Arrays.stream(line.split(" ")))
        .limit(atMost)
        .collect(Collectors.joining(" "));
  }

  /**
   * The first paragraphs as plain words on one line, cut at the end of a word, then {@code …}.
   *
   * @param atMost the longest result, in characters (code points), the {@code …} included; at least
   *     2
   */
  public String opening(int atMost) {
    if (atMost < 2) {
      throw new IllegalArgumentException("opening of " + atMost);
    }
    String all = document.map(root -> Words.paragraphs(root, atMost)).orElse("");
    if (all.codePointCount(0, all.length()) <= atMost) {
      return all;
    }
    String cut = all.substring(0, all.offsetByCodePoints(0, atMost - 1));
    boolean betweenWords = all.charAt(cut.length()) == ' ';
    int lastGap = cut.lastIndexOf(' ');
    return (betweenWords || lastGap < 1 ? cut : cut.substring(0, lastGap)).strip() + "…";
  }

  String file() {
    return file;
  }

  Optional<Document> document() {
    return document;
  }

  Findings findings() {
    return findings;
  }
}
