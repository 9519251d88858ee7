package ribband.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Links between the documents lead to files and headings that are there. */
class DocumentLinksTest {
  private static final Pattern LINK = Pattern.compile("\\]\\(([^()\\s]+)\\)");
  private static final Pattern FENCED = Pattern.compile("(?ms)^ *```.*?^ *```$|`[^`\n]+`");

  private static String prose(Path document) throws IOException {
    String text = Files.readString(document, StandardCharsets.UTF_8);
    return FENCED.matcher(text).replaceAll("");
  }

  /** As hosts of repositories make them: small letters, hyphens for blanks, no other marks. */
  private static Set<String> headings(Path document) throws IOException {
    String text = Files.readString(document, StandardCharsets.UTF_8);
    return Pattern.compile("(?m)^#+ (.*)$")
        .matcher(text)
        .results()
        .map(heading -> heading.group(1).toLowerCase(Locale.ROOT))
        .map(heading -> heading.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
        .collect(Collectors.toSet());
  }

  @Test
  void everyLinkLeadsToAFileAndAHeadingThatAreThere() throws IOException {
    List<String> dead = new ArrayList<>();
    int links = 0;
    for (Path document : Example.documents()) {
      for (MatchResult link : LINK.matcher(prose(document)).results().toList()) {
        String[] target = link.group(1).split("#", 2);
        links++;
        Path file = target[0].isEmpty() ? document : document.resolveSibling(target[0]);
        boolean there =
            target[0].startsWith("https:")
                || Files.exists(file) && (target.length < 2 || headings(file).contains(target[1]));
        if (!there) {
          dead.add(document + " -> " + link.group(1));
        }
      }
    }
    assertEquals(List.of(), dead);
    assertTrue(links > 60, links + " links");
  }

  @Test
  void theReadmeLeadsToEveryDocument() throws IOException {
    Set<String> named = new TreeSet<>();
    for (MatchResult link : LINK.matcher(prose(Path.of("README.md"))).results().toList()) {
      named.add(link.group(1));
    }
    Set<String> there = new TreeSet<>();
    try (Stream<Path> files = Files.list(Path.of("docs"))) {
      files.map(file -> file.toString()).filter(file -> file.endsWith(".md")).forEach(there::add);
    }
    there.removeAll(named);
    assertEquals(Set.of(), there);
  }
}
