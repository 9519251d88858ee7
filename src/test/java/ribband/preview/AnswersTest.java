package ribband.preview;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.problem.Place;
import ribband.problem.Problem;

/** What a browser is answered, and that nothing outside the site ever is. */
class AnswersTest {
  private static final String HOST = "127.0.0.1:6415";
  private static final String SECRET = "SECRET";
  private static final String PAGE =
      "<!DOCTYPE html><html><head><title>Teal</title></head><body>On.</body></html>";

  @TempDir private Path folder;
  private Path site;
  private Answers answers;
  private Edition edition;

  @BeforeEach
  void siteAmongSecrets() throws IOException {
    site = Files.createDirectories(folder.resolve("boat/site/entries")).getParent();
    Files.writeString(site.resolve("index.html"), PAGE);
    Files.writeString(site.resolve("entries/bär & co.html"), PAGE);
    Files.writeString(site.resolve("À.html"), PAGE);
    Files.writeString(site.resolve("months.csv"), "month\n");
    Files.writeString(site.resolve("bare.html"), "No head.");
    Files.writeString(site.resolve("site-files.txt"), "list");
    Files.writeString(site.resolve(".hidden.html"), SECRET);
    Files.writeString(folder.resolve("boat/project.yaml"), SECRET);
    Files.writeString(
        Files.createDirectories(folder.resolve("boat/.ribband")).resolve("texts"), SECRET);
    Files.writeString(
        Files.createDirectories(folder.resolve("boat/site-of-others")).resolve("x"), SECRET);
    Files.createSymbolicLink(site.resolve("out.html"), folder.resolve("boat/project.yaml"));
    Files.createSymbolicLink(site.resolve("up"), folder.resolve("boat"));
    Files.createSymbolicLink(site.resolve("first.html"), site.resolve("index.html"));
    SiteFolder served = new SiteFolder(site);
    answers =
        new Answers(
            served, new PreviewPages("boat", "ribband 1.2.3"), List.of(HOST, "localhost:6415"));
    edition = new Edition(served.state(), List.of());
  }

  private Answer get(String path) {
    return answers.to(new Request("GET", HOST, path, ""), edition);
  }

  private static String text(Answer answer) {
    return new String(answer.content(), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @CsvSource({
    "/,text/html; charset=utf-8",
    "/index.html,text/html; charset=utf-8",
    "/%69ndex.html,text/html; charset=utf-8",
    "/index.htm%6C,text/html; charset=utf-8",
    "/first.html,text/html; charset=utf-8",
    "/entries/b%C3%A4r%20&%20co.html,text/html; charset=utf-8",
    "/%C3%80.html,text/html; charset=utf-8",
    "/months.csv,text/csv; charset=utf-8",
    "/site-files.txt,text/plain; charset=utf-8",
    "/assets/ribband.css,text/css; charset=utf-8",
    "/assets/icon.svg,image/svg+xml",
    "/.ribband/preview.js,text/javascript; charset=utf-8",
    "/.ribband/preview.css,text/css; charset=utf-8",
  })
  void whatTheSiteHasIsFound(String path, String type) {
    Answer answer = get(path);
    assertEquals(200, answer.status());
    assertEquals(type, answer.type());
    assertTrue(answer.content().length > 0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../project.yaml",
        "/entries/../../project.yaml",
        "/%2e%2e/project.yaml",
        "/%2E%2E/project.yaml",
        "/.%2e/project.yaml",
        "/entries/%2e%2e/%2e%2e/project.yaml",
        "/..%2fproject.yaml",
        "/..%2Fproject.yaml",
        "/entries%2findex.html",
        "/%252e%252e/project.yaml",
        "/..%5cproject.yaml",
        "/..\\project.yaml",
        "/%5c%5chost/share",
        "//etc/passwd",
        "/%2Fetc/passwd",
        "/entries//x.html",
        "/index.html%00",
        "/index.html%00.css",
        "/%0aindex.html",
        "/index.html%7f",
        "/%",
        "/%4",
        "/%zz",
        "/%4g",
        "/%g4",
        "/%-1",
        "/%+1",
        "/%c0%ae%c0%ae/project.yaml",
        "/%ff",
        "/%e4",
        "/bär.html",
        "/%C3\u0080.html",
        "/\u0080",
        "/index.html/",
        "/index.html/x",
        "/out.html",
        "/up/project.yaml",
        "/up/.ribband/texts",
        "/.hidden.html",
        "/%2ehidden.html",
        "/./index.html",
        "/entries",
        "/entries/",
        "/.ribband/",
        "/.ribband/texts",
        "/.ribband/../preview.js",
        "/.ribband/box.peb",
        "/.ribband/head.html",
        "/../.ribband/texts",
        "/../site-of-others/x",
        "/assets/../project.yaml",
        "/assets/fonts.css/",
        "/none.html",
        "index.html",
        "*",
        "",
        "http://127.0.0.1:6415/../project.yaml",
      })
  void noPathLeadsOutOfTheSite(String path) {
    Answer answer = get(path);
    assertEquals(404, answer.status());
    assertEquals("text/html; charset=utf-8", answer.type());
    assertTrue(text(answer).contains("There is no such page"));
    assertFalse(text(answer).contains(SECRET));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "127.0.0.1",
        "127.0.0.1:80",
        "127.0.0.1:64150",
        "localhost",
        "boat.example:6415",
        "[::1]:6415",
        "127.0.0.1:6415.example",
        "LOCALHOST:6415"
      })
  void aForeignNameThatLeadsHereIsRefused(String host) {
    Answer answer = answers.to(new Request("GET", host, "/", ""), edition);
    assertEquals(421, answer.status());
    assertEquals("This preview answers to 127.0.0.1:6415 alone.", text(answer));
    assertEquals("text/plain; charset=utf-8", answer.type());
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "TRACE", "get", "PROPFIND"})
  void thereIsNothingButReading(String method) {
    Answer answer = answers.to(new Request(method, HOST, "/", ""), edition);
    assertEquals(405, answer.status());
    assertEquals("A preview is only read.", text(answer));
  }

  @Test
  void bothNamesAndBothMethodsAreAnswered() {
    assertEquals(200, answers.to(new Request("HEAD", HOST, "/", ""), edition).status());
    assertEquals(200, answers.to(new Request("GET", "localhost:6415", "/", ""), edition).status());
  }

  @Test
  void pagesGetTheScriptAndAllElseIsAsOnTheDisk() throws IOException {
    assertEquals(
        PAGE.replace(
            "</head>",
            "<link rel=\"stylesheet\" href=\"/.ribband/preview.css\">\n<script"
                + " src=\"/.ribband/preview.js?"
                + edition.site()
                + "\" defer></script>\n</head>"),
        text(get("/")));
    assertEquals("No head.", text(get("/bare.html")));
    assertArrayEquals(Files.readAllBytes(site.resolve("months.csv")), get("/months.csv").content());
    assertEquals(PAGE, Files.readString(site.resolve("index.html")));
  }

  @Test
  void onlyPagesGetTheScript() throws IOException {
    Files.writeString(site.resolve("page.txt"), PAGE);
    assertEquals(PAGE, text(get("/page.txt")));
    Files.writeString(site.resolve("begins.html"), "</head>");
    assertTrue(text(get("/begins.html")).endsWith(" defer></script>\n</head>"));
  }

  @Test
  void aProblemIsToldWithItsPlace() {
    assertEquals(
        new Trouble("warning", "a.md:3", "is odd; mend it"),
        Trouble.of(Problem.warning(new Place("a.md", 3, 0), "is odd; mend it")));
    assertEquals("error", Trouble.of(Problem.error(Place.of("a.md"), "is wrong")).kind());
  }

  @Test
  void thePagesAskWhatIsNew() {
    Edition told =
        new Edition(edition.site(), List.of(new Trouble("error", "a.md:3:8", "is <b>; not")));
    assertEquals(12, told.mark().length());
    assertEquals(
        "<div class=\"told\" data-edition=\""
            + edition.site()
            + "\" data-mark=\""
            + told.mark()
            + "\">\n"
            + "<p class=\"told-heading\">1 problem</p>\n"
            + "<ul>\n"
            + "<li><span class=\"told-place\">a.md:3:8</span> <span"
            + " class=\"told-kind\">error</span> is &lt;b&gt;; not</li>\n"
            + "</ul>\n"
            + "<p class=\"told-below\">The pages stay as they were until all is mended.</p>\n"
            + "</div>\n",
        text(news("old", told)));
    Answer nothing = news(told.site() + "." + told.mark(), told);
    assertEquals(204, nothing.status());
    assertEquals(0, nothing.content().length);
    assertEquals(200, news(edition.site() + ".", told).status());
    assertEquals(204, news(edition.site() + ".", edition).status());
    assertFalse(text(news("", edition)).contains("<p"));
  }

  private Answer news(String known, Edition now) {
    return answers.to(new Request("GET", HOST, "/.ribband/now", known), now);
  }

  @Test
  void warningsHoldNothingUpAndFewAreListed() {
    List<Trouble> warnings =
        IntStream.range(0, 23).mapToObj(i -> new Trouble("warning", "a.md:" + i, "w")).toList();
    String box = text(news("", new Edition("x", warnings)));
    assertTrue(box.contains(">23 warnings</p>"), box);
    assertTrue(box.contains(">3 more in the terminal.</p>"), box);
    assertFalse(box.contains("stay as they were"), box);
    assertTrue(box.contains("a.md:19<") && !box.contains("a.md:20<"), box);
    String all = text(news("", new Edition("x", warnings.subList(0, 20))));
    assertFalse(all.contains("more in the terminal"), all);
    String outside =
        text(news("", new Edition("x", List.of(Trouble.outside("The disk is\nfull.")))));
    assertTrue(outside.contains("<span class=\"told-kind\">trouble</span>"), outside);
    assertFalse(outside.contains("told-place"), outside);
    assertTrue(outside.contains("stay as they were"), outside);
  }

  @Test
  void untilThereIsASiteEveryPageSaysSo() throws IOException {
    Edition none = new Edition(Edition.NO_SITE, List.of(new Trouble("error", "a.md", "is wrong")));
    for (String path : List.of("/", "/index.html", "/entries/x.html", "/../x")) {
      Answer answer = answers.to(new Request("GET", HOST, path, ""), none);
      assertEquals(503, answer.status(), path);
      assertTrue(text(answer).contains("Nothing is published yet"), path);
      assertTrue(text(answer).contains("is wrong"), path);
      assertTrue(text(answer).contains("as soon as all is mended"), path);
      assertTrue(text(answer).contains("preview.js?none\""), path);
      assertTrue(
          text(answer).contains(">boat</a>") && text(answer).contains("ribband 1.2.3"), path);
    }
    Answer style = answers.to(new Request("GET", HOST, "/assets/charts.css", ""), none);
    assertEquals(200, style.status());
    Files.delete(site.resolve("site-files.txt"));
    assertEquals(Edition.NO_SITE, new SiteFolder(site).state());
    assertEquals(Edition.NO_SITE, new SiteFolder(folder.resolve("nowhere")).state());
  }

  @Test
  void anEditionIsNewWhereAFileIs() throws IOException {
    SiteFolder served = new SiteFolder(site);
    assertEquals(edition.site(), served.state());
    Files.writeString(site.resolve("index.html"), PAGE + " ");
    assertFalse(edition.site().equals(served.state()));
    assertFalse(served.state().contains(" "));
  }

  @Test
  void aFileThatVanishesWhileItIsAskedForIsMissing() throws IOException {
    Files.delete(site.resolve("bare.html"));
    assertEquals(404, get("/bare.html").status());
    assertEquals(404, answers.to(new Request("GET", HOST, "/x%20y", ""), edition).status());
  }

  @ParameterizedTest
  @CsvSource({
    "a.HTML,text/html; charset=utf-8",
    "a.js,text/javascript; charset=utf-8",
    "a.json,application/json",
    "a.xml,application/xml",
    "a.ics,text/calendar; charset=utf-8",
    "a.jpg,image/jpeg",
    "a.png,image/png",
    "a.gif,image/gif",
    "a.webp,image/webp",
    "a.woff2,font/woff2",
    "html,text/html; charset=utf-8",
    "a.exe,application/octet-stream",
    "a,application/octet-stream"
  })
  void everyFileHasAType(String path, String type) {
    assertEquals(type, ContentType.of(path));
  }
}
