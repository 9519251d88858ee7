package ribband.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the map for contributors names is there, and every folder of sources is on it. */
class MapTest {
  private static List<String> named(String pattern) throws IOException {
    String map = Files.readString(Path.of("DEVELOPERS.md"), StandardCharsets.UTF_8);
    return Pattern.compile(pattern).matcher(map).results().map(found -> found.group(1)).toList();
  }

  private static List<String> rows() throws IOException {
    return named("(?m)^\\| `([^`]+)` \\| ");
  }

  @Test
  void everyFolderOfSourcesHasItsRow() throws IOException {
    TreeSet<String> folders = new TreeSet<>();
    for (String parent : List.of("src", "src/main", "src/test")) {
      try (Stream<Path> within = Files.list(Path.of(parent))) {
        within.filter(Files::isDirectory).map(Object::toString).forEach(folders::add);
      }
    }
    folders.removeAll(List.of("src/main", "src/test"));
    for (String row : rows()) {
      folders.removeIf(folder -> (row + "/").startsWith(folder + "/"));
    }
    assertEquals(new TreeSet<>(), folders);
  }

  @Test
  void everyFolderAndTemplateNamedIsThere() throws IOException {
    List<String> paths =
        Stream.of(rows(), named("`(site-template/[^`]+)`")).flatMap(List::stream).toList();
    assertFalse(paths.isEmpty());
    assertEquals(List.of(), paths.stream().filter(path -> !Files.exists(Path.of(path))).toList());
  }

  @Test
  void everyClassNamedWithItsPackageIsThere() throws IOException {
    List<String> classes = named("`([a-z]+\\.[A-Z]\\w+)`");
    assertFalse(classes.isEmpty());
    assertEquals(List.of(), classes.stream().filter(name -> !isThere(name)).toList());
  }

  private static boolean isThere(String name) {
    String file = "java/ribband/" + name.replace('.', '/') + ".java";
    return Files.exists(Path.of("src/main", file)) || Files.exists(Path.of("src/test", file));
  }
}
