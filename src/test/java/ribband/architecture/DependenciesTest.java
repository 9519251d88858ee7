package ribband.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The dated review of libraries names those of the build, each at its version. */
class DependenciesTest {
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| ([a-z0-9, -]+) \\| ([0-9][^ |]*) \\|");
  private static final Pattern PLUGINS =
      Pattern.compile(
          "(?m)^\\| ([a-z0-9, -]+-plugin|[a-z0-9, -]*pitest[a-z0-9, -]+) \\| ([0-9., ]+) \\|");
  private static final Pattern DATED =
      Pattern.compile("(?m)^## Reviewed on (\\d{4}-\\d{2}-\\d{2})$");

  @Test
  void theReviewNamesEveryLibraryAtTheVersionThatIsBuiltWith() throws Exception {
    String review = page().substring(page().indexOf("\n## Reviewed on "));
    Map<String, String> reviewed = new TreeMap<>();
    for (MatchResult row : ROW.matcher(review).results().toList()) {
      for (String name : row.group(1).split(", ")) {
        reviewed.put(name, row.group(2));
      }
    }
    assertEquals(built(), reviewed);
  }

  @Test
  void theListsOfLibrariesSayTheSameVersions() throws Exception {
    Map<String, String> built = built();
    String lists = page().substring(0, page().indexOf("\n### In the build"));
    for (MatchResult row : ROW.matcher(lists).results().toList()) {
      assertEquals(built.get(row.group(1).replaceFirst(" and .*", "")), row.group(2), row.group(1));
    }
  }

  @Test
  void theTableOfPluginsNamesEachAtTheVersionThatIsBuiltWith() throws Exception {
    String table = page().substring(page().indexOf("\n| plugin | version |"));
    Map<String, String> told = new TreeMap<>();
    for (MatchResult row : PLUGINS.matcher(table).results().toList()) {
      String[] names = row.group(1).split(", ");
      String[] versions = row.group(2).split(", ");
      for (int i = 0; i < names.length; i++) {
        told.put(names[i], versions[i]);
      }
    }
    Map<String, String> built = versions(pom(), "plugin");
    // What a plugin brings along is told where somebody thought it worth a word.
    Map<String, String> inPlugins = versions(pom(), "dependency");
    told.keySet().stream()
        .filter(name -> !built.containsKey(name))
        .toList()
        .forEach(name -> built.put(name, inPlugins.getOrDefault(name, "none")));
    assertEquals(built, told);
  }

  /** Version by artifact, of elements so called that name one. */
  private static Map<String, String> versions(Document pom, String element) {
    Map<String, String> versions = new TreeMap<>();
    NodeList found = pom.getElementsByTagName(element);
    for (int i = 0; i < found.getLength(); i++) {
      Element one = (Element) found.item(i);
      if (one.getElementsByTagName("version").getLength() > 0) {
        versions.putIfAbsent(text(one, "artifactId"), version(pom, text(one, "version")));
      }
    }
    return versions;
  }

  @Test
  void theReviewIsDatedOnce() throws IOException {
    assertEquals(1, DATED.matcher(page()).results().count());
  }

  private static String page() throws IOException {
    return Files.readString(Path.of("docs/decisions.md"), StandardCharsets.UTF_8);
  }

  private static Document pom() throws Exception {
    try (InputStream in = Files.newInputStream(Path.of("pom.xml"))) {
      return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
    }
  }

  /** Version by artifact, of what the project itself asks for. */
  private static Map<String, String> built() throws Exception {
    Document pom = pom();
    Map<String, String> versions = new TreeMap<>();
    NodeList all = pom.getElementsByTagName("dependency");
    for (int i = 0; i < all.getLength(); i++) {
      Element dependency = (Element) all.item(i);
      if (dependency.getParentNode().getParentNode() == pom.getDocumentElement()) {
        versions.put(text(dependency, "artifactId"), version(pom, text(dependency, "version")));
      }
    }
    return versions;
  }

  private static String version(Document pom, String written) {
    return written.startsWith("${")
        ? pom.getElementsByTagName(written.substring(2, written.length() - 1))
            .item(0)
            .getTextContent()
        : written;
  }

  private static String text(Element parent, String name) {
    return parent.getElementsByTagName(name).item(0).getTextContent();
  }
}
