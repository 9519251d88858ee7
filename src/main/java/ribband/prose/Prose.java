package ribband.prose;

import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import ribband.problem.Problems;

/**
 * Reads Markdown and shows it as safe HTML. Built once; may be shared between threads. Keeps no
 * text.
 */
public final class Prose {
  private static final Duration DEADLINE = Duration.ofSeconds(10);
  // A text this short is shown in far less time than the deadline once it is read.
  private static final int SHORT = 16 << 10;

  private final Parser parser = Markdown.journal();
  private final Parser bareLinksParser = Markdown.journalWithBareLinks();
  private final HtmlRenderer renderer = Markdown.renderer(EntryRenderer::new);
  private final Wall wall = new Wall();
  private final Duration deadline;
  private final DeepWorkers workers;

  public Prose() {
    this(DEADLINE);
  }

  /**
   * @param deadline how long the reading of one text may take
   */
  Prose(Duration deadline) {
    this.deadline = deadline;
    this.workers = new DeepWorkers(deadline);
  }

  /**
   * Reads a text; whatever it holds, what is wrong becomes problems. A text that is refused reads
   * as empty.
   */
  public Manuscript read(Body body, Problems problems) {
    String text = body.text().replace("\r\n", "\n");
    Lines lines = new Lines(body, text);
    Optional<Bounds.Breach> breach = Bounds.in(text);
    if (breach.isPresent()) {
      return refused(body, lines, breach.get(), problems);
    }
    Problems found = new Problems();
    try {
      Manuscript manuscript = run(text.length(), () -> readHere(body, text, lines, found));
      problems.addAll(found.sorted());
      return manuscript;
    } catch (DeepWorkers.Failure failure) {
      return refused(body, lines, new Bounds.Breach(0, sentence(failure)), problems);
    }
  }

  /**
   * Safe HTML for one entry's page; headings begin at h2. Empty for a text that was refused.
   *
   * @param around asked once for each relative link and picture, on the calling thread
   */
  public String html(Manuscript manuscript, Surroundings around) {
    if (manuscript.document().isEmpty()) {
      return "";
    }
    Sheet sheet = sheet(manuscript, around);
    try {
      Document document = manuscript.document().get();
      return run(document.getTextLength(), () -> htmlHere(document, sheet));
    } catch (DeepWorkers.Failure failure) {
      throw new IllegalStateException("showing " + manuscript.file(), failure);
    }
  }

  private <T> T run(int length, Callable<T> work) throws DeepWorkers.Failure {
    return length > SHORT ? workers.run(work) : workers.runShort(work);
  }

  private Manuscript readHere(Body body, String text, Lines lines, Problems found) {
    Parser fitting = mayHoldBareLinks(text) ? bareLinksParser : parser;
    Document document = fitting.parse(BasedSequence.of(new Leash(text, deadline)));
    Optional<Bounds.Breach> breach = Bounds.in(document);
    if (breach.isPresent()) {
      return refused(body, lines, breach.get(), found);
    }
    Manuscript manuscript =
        new Manuscript(body.file(), document, Reading.of(document, lines, found));
    if (text.length() > SHORT) {
      htmlHere(document, new Sheet(manuscript.findings(), Map.of(), Map.of()));
    }
    return manuscript;
  }

  /** Searching for bare links takes a third of the reading, and few texts have any. */
  private static boolean mayHoldBareLinks(String text) {
    return text.indexOf('@') >= 0
        || text.contains("//")
        || text.contains("w.")
        || text.contains("W.");
  }

  private String htmlHere(Document document, Sheet sheet) {
    synchronized (document) {
      document.set(EntryRenderer.SHEET, sheet);
      return wall.pass(renderer.render(document));
    }
  }

  private static Sheet sheet(Manuscript manuscript, Surroundings around) {
    Map<Mention, String> hrefs = new HashMap<>();
    Map<Mention, Print> prints = new HashMap<>();
    for (Mention mention : manuscript.mentions()) {
      if (mention.kind() == Mention.Kind.PICTURE) {
        around.print(mention).ifPresent(print -> prints.put(mention, print));
      } else if (mention.isRelative()) {
        around.href(mention).ifPresent(href -> hrefs.put(mention, href));
      }
    }
    return new Sheet(manuscript.findings(), hrefs, prints);
  }

  private static Manuscript refused(
      Body body, Lines lines, Bounds.Breach breach, Problems problems) {
    problems.error(lines.lineAt(breach.offset()), breach.sentence());
    return Manuscript.blank(body.file());
  }

  private static String sentence(DeepWorkers.Failure failure) {
    return switch (failure.why()) {
      case TOO_DEEP -> Bounds.tooDeep(0).sentence();
      case TOO_LONG -> "reading this text took too long; shorten or simplify it";
      case DEFECT -> "this text could not be read; simplify its marks";
    };
  }
}
