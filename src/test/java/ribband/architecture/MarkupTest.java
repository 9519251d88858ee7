package ribband.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** All markup stands in templates, and templates trust nothing but sanitized prose. */
class MarkupTest {
  private static final Pattern ATTRIBUTE =
      Pattern.compile("[\\s}]([a-zA-Z][a-zA-Z:-]*)(?:\\s*=\\s*(\"[^\"]*\"|'[^']*'|[^\\s>]+))?");

  /** A file of the site's own that runs when the page is read; nothing inside. */
  private static final String OWN_SCRIPT =
      "<script src=\"\\{\\{ frame\\.root }}assets/[a-z]+\\.js\" defer></script>";

  /** A template's source and, with the words of the template language taken out, its markup. */
  private record Template(String name, String source) {
    List<String> told() {
      List<String> told = new ArrayList<>();
      Matcher words = Pattern.compile("\\{[{%].*?[%}]}", Pattern.DOTALL).matcher(source);
      while (words.find()) {
        told.add(words.group());
      }
      return told;
    }

    List<String> tags() {
      String markup = source.replaceAll("(?s)\\{%.*?%}", " ").replaceAll("(?s)\\{\\{.*?}}", "x");
      List<String> tags = new ArrayList<>();
      Matcher matcher = Pattern.compile("<[a-z][^<>]*>").matcher(markup);
      while (matcher.find()) {
        tags.add(matcher.group());
      }
      return tags;
    }
  }

  private static List<Template> templates() throws IOException {
    List<Template> templates = new ArrayList<>();
    for (Path file : sources(Path.of("site-template"), ".peb")) {
      String source =
          Files.readString(file, StandardCharsets.UTF_8).replaceAll("(?s)\\{#.*?#}", "");
      templates.add(new Template(Path.of("site-template").relativize(file).toString(), source));
    }
    return templates;
  }

  private static List<Path> sources(Path root, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** Prose writes through its library's writer and lists what it lets through. */
  @Test
  void javaHoldsNone() throws IOException {
    Pattern markup = Pattern.compile("\"[^\"\\n]*</?[a-z][a-z0-9]*[ >/][^\"\\n]*\"");
    Pattern block = Pattern.compile("(?s)\"\"\"\\R.*?\"\"\"");
    List<String> found = new ArrayList<>();
    for (Path file : sources(Path.of("src/main/java/ribband"), ".java")) {
      String text =
          Files.readString(file, StandardCharsets.UTF_8).replaceAll("(?m)^ *(/?\\*|//).*$", "");
      for (Pattern pattern : List.of(markup, block)) {
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
          // The YAML parser's own words for where it stopped.
          boolean others = matcher.group().matches(".*<(block end|document start)>.*");
          if (!others && Pattern.compile("</?[a-z]").matcher(matcher.group()).find()) {
            found.add(file.getFileName() + ": " + matcher.group());
          }
        }
      }
    }
    assertEquals(List.of(), found);
  }

  @Test
  void templatesTrustSanitizedProseAlone() throws IOException {
    List<String> raw = new ArrayList<>();
    for (Template template : templates()) {
      for (String told : template.told()) {
        if (told.matches("(?s).*\\b(raw|autoescape|escape|verbatim)\\b.*")) {
          raw.add(template.name() + ": " + told);
        }
      }
    }
    assertEquals(
        List.of(
            "entry.peb: {{ page.html | raw }}",
            // Both pass the sanitizer as a whole.
            "feed-entry.peb: {{ page.html | raw }}",
            "feed-month.peb: {{ page.html | raw }}",
            "home.peb: {{ page.about | raw }}"),
        raw);
  }

  @Test
  void attributesAreQuotedAndNoneHoldsStyleOrScript() throws IOException {
    List<String> wrong = new ArrayList<>();
    int tags = 0;
    for (Template template : templates()) {
      for (String tag : template.tags()) {
        Matcher attributes = ATTRIBUTE.matcher(tag.replaceFirst("/?>$", ""));
        while (attributes.find()) {
          String name = attributes.group(1);
          String value = attributes.group(2);
          boolean quoted = value == null || value.startsWith("\"");
          boolean bad = name.equals("style") || name.startsWith("on");
          if (!quoted || bad || value != null && value.matches("(?i)\"\\s*(java|vb)script:.*")) {
            wrong.add(template.name() + ": " + tag);
          }
        }
        tags++;
      }
      String rest = template.source().replaceAll(OWN_SCRIPT, "");
      assertTrue(!rest.matches("(?is).*<(script|style|iframe|object|embed)\\b.*"));
    }
    assertEquals(List.of(), wrong);
    assertTrue(tags > 200, "tags found: " + tags);
  }

  /** Fonts are in the style sheet itself; nothing else is fetched by one. */
  @Test
  void stylesFetchNothing() throws IOException {
    List<String> fetched = new ArrayList<>();
    for (Path file : sources(Path.of("site-template"), ".css")) {
      Matcher urls =
          Pattern.compile("url\\((?!\\s*['\"]?data:)[^)]*|@import[^;]*")
              .matcher(Files.readString(file, StandardCharsets.UTF_8));
      while (urls.find()) {
        fetched.add(
            file.getFileName()
                + ": "
                + urls.group().substring(0, Math.min(60, urls.group().length())));
      }
    }
    assertEquals(List.of(), fetched);
  }
}
