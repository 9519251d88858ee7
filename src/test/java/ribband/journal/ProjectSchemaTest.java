package ribband.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import ribband.problem.Problem;

/**
 * {@code docs/project.schema.json} and the reader refuse and accept the same, and know the same
 * keys. The schema is used as an editor uses it: on the tree that a plain parser of YAML makes.
 */
class ProjectSchemaTest {
  private static final Path SCHEMA = Path.of("docs/project.schema.json");
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;
  private int count;

  /** Mistakes that the reader tells and no schema can see. */
  private enum Beyond {
    /** Days, months and years that there are not. */
    CALENDAR("not in the calendar|has no such month|too long ago|too far ahead"),
    /** Nothing, or more than there can be. */
    BOUNDS("is no temperature of a shop|has a zero in it|more than ten years|is no time at all"),
    /** Tables of names: currencies, time zones. */
    TABLES("is no currency code|is no time zone"),
    /** Files that are not there. */
    FILES("is not there|is no plain file|outside the journal|leads out of|on the net|a backslash"),
    /** What one key says of another. */
    CROSSED(
        "is not among|but the unit is|belongs here|ends before it begins|no currency is named"
            + "|is not an area for an amount|unit on one side|decimal places than"),
    /** The same name twice, spelled in one way or in two. */
    TWICE("stands twice|is listed twice"),
    /** A host, a port or a page that an address cannot have. */
    ADDRESS("has port|the address of one page"),
    /** A number as it is written, which a parser of YAML has read already. */
    WRITTEN(
        "has a zero in front|has a sign in front|no figure before the point|more than 4 decimal"
            + "|more than any boat"),
    /** Signs of YAML's that the reader does not take, and characters no editor shows. */
    SIGNS("is not supported|control character|a second document|nests more than");

    private final Pattern sentence;

    Beyond(String sentence) {
      this.sentence = Pattern.compile(sentence);
    }

    static Set<Beyond> of(String sentence) {
      Set<Beyond> kinds = EnumSet.noneOf(Beyond.class);
      for (Beyond kind : values()) {
        if (kind.sentence.matcher(sentence).find()) {
          kinds.add(kind);
        }
      }
      return kinds;
    }
  }

  private static JsonNode tree() throws IOException {
    return JSON.readTree(SCHEMA.toFile());
  }

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(tree());
  }

  /** What the schema says of a project; a text that is no YAML is refused by every editor. */
  private static List<String> said(JsonSchema schema, String project) {
    try {
      JsonNode read = YAML.readTree(project);
      boolean empty = read == null || read.isMissingNode() || read.isNull();
      return empty
          ? List.of()
          : schema.validate(read).stream().map(Object::toString).sorted().toList();
    } catch (JsonProcessingException e) {
      return List.of("no YAML");
    }
  }

  /** The errors that the reader tells of a project. */
  private List<String> told(String project) throws IOException {
    Path root = folder.resolve("journal-" + count++);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("project.yaml", project);
    files.put("about.md", "Words.\n");
    JournalFiles.write(root, files);
    return JournalFiles.read(root).problems().stream()
        .filter(Problem::isError)
        .map(Problem::sentence)
        .toList();
  }

  private void agree(JsonSchema schema, String project) throws IOException {
    List<String> told = told(project);
    List<String> said = said(schema, project);
    boolean mustSee = told.stream().anyMatch(sentence -> Beyond.of(sentence).isEmpty());
    String both = "reader: " + told + "\nschema: " + said + "\n" + project;
    if (told.isEmpty() && !said.isEmpty()) {
      assertEquals(List.of(), said(schema, respelled(project)), both);
    } else if (mustSee) {
      assertFalse(said.isEmpty(), both);
    }
  }

  /** As the documents spell it, and as editors propose it: small letters, spaces within keys. */
  private static String respelled(String project) {
    return Pattern.compile("(?<=^|[{,\\s])([a-z]+)[-_ ]+([a-z]+)(?=:(?: |$))", Pattern.MULTILINE)
        .matcher(project.toLowerCase(Locale.ROOT))
        .replaceAll("$1 $2");
  }

  /** What no case of the journal has, of the kinds that a schema passes over. */
  private static final List<String> OWN =
      List.of(
          "started: 2024-02-30\n",
          "site: {about: other.md}\n",
          "site: {about: ../other.md}\n",
          "phases: [{id: planking, hours: 010}]\n",
          "carried: {cost: {planking: 100000000000000}}\nphases: [planking]\n",
          "name: &boat Dunlin\n",
          "name: !!str Dunlin\n");

  private static Set<String> projects() throws IOException {
    List<Path> documents = new ArrayList<>(List.of(Path.of("docs/journal-format.md")));
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/ribband/journal"))) {
      files.sorted().forEach(documents::add);
    }
    Set<String> projects = new TreeSet<>();
    for (Path document : documents) {
      for (JournalCase one : JournalCase.of(Files.readString(document, StandardCharsets.UTF_8))) {
        projects.add(one.files().getOrDefault("project.yaml", ""));
      }
    }
    projects.addAll(OWN);
    projects.add(Files.readString(Path.of("sample-journal/project.yaml"), StandardCharsets.UTF_8));
    return projects;
  }

  /**
   * Editors use the regular expressions of their own language, and not all know classes of Unicode.
   */
  @Test
  void patternsAreThoseThatEveryLanguageReads() throws IOException {
    assertFalse(Files.readString(SCHEMA, StandardCharsets.UTF_8).contains("\\\\p"));
  }

  @TestFactory
  Stream<DynamicTest> theyAgreeOnEveryProjectOfTheCases() throws IOException {
    JsonSchema schema = schema();
    Set<String> projects = projects();
    assertTrue(projects.size() > 60, projects.size() + " projects");
    return projects.stream()
        .map(
            project ->
                DynamicTest.dynamicTest(
                    "a project: " + project.strip().replaceAll("\\s+", " "),
                    () -> agree(schema, project)));
  }

  /** Every place of a full project, with its key taken out, misspelled, and of another type. */
  @TestFactory
  Stream<DynamicTest> theyAgreeOnEveryPlaceSpoiled() throws IOException {
    JsonSchema schema = schema();
    JsonNode full = YAML.readTree(fullProject());
    assertEquals(List.of(), said(schema, fullProject()));
    Map<String, String> spoiled = new LinkedHashMap<>();
    spoil(full, "", full, spoiled);
    assertTrue(spoiled.size() > 400, spoiled.size() + " spoiled");
    return spoiled.entrySet().stream()
        .map(one -> DynamicTest.dynamicTest(one.getKey(), () -> agree(schema, one.getValue())));
  }

  private static String fullProject() throws IOException {
    String format = Files.readString(Path.of("docs/journal-format.md"), StandardCharsets.UTF_8);
    return JournalCase.of(format).stream()
        .map(one -> one.files().getOrDefault("project.yaml", ""))
        .filter(project -> project.contains("shop temperatures:") && project.contains("what:"))
        .findFirst()
        .orElseThrow();
  }

  private static final List<String> OTHER_VALUES =
      List.of("[]", "{a: b}", "null", "true", "-1", "2;45 words");

  private static void spoil(JsonNode root, String path, JsonNode at, Map<String, String> spoiled)
      throws IOException {
    if (at instanceof ObjectNode object) {
      List<String> keys = new ArrayList<>();
      object.fieldNames().forEachRemaining(keys::add);
      for (String key : keys) {
        JsonNode value = object.get(key);
        object.remove(key);
        spoiled.put(path + "/" + key + " out", text(root));
        object.set(key + "x", value);
        spoiled.put(path + "/" + key + " misspelled", text(root));
        object.remove(key + "x");
        for (String other : OTHER_VALUES) {
          object.set(key, YAML.readTree(other));
          spoiled.put(path + "/" + key + ": " + other, text(root));
        }
        object.set(key, value);
        spoil(root, path + "/" + key, value, spoiled);
      }
    } else {
      for (int i = 0; i < at.size(); i++) {
        spoil(root, path + "/" + i, at.get(i), spoiled);
      }
    }
  }

  private static String text(JsonNode root) throws IOException {
    // The reader takes what is written: nothing, and not the word null.
    return YAML.writeValueAsString(root).replaceAll("(?m)(:|-) null$", "$1");
  }

  /** Where in a project each list of the schema's keys applies, as a project that opens it. */
  private static Map<String, String> openings() {
    Map<String, String> openings = new LinkedHashMap<>();
    openings.put("/properties", "KEY: \n");
    openings.put("/properties/site/properties", "site: {KEY: }\n");
    openings.put("/properties/carried/properties", "carried: {KEY: }\n");
    openings.put("/definitions/phase/properties", "phases: [{id: a, KEY: }]\n");
    openings.put("/definitions/away/properties", "away: [{KEY: }]\n");
    openings.put("/definitions/material/properties", "materials: {a: {KEY: }}\n");
    openings.put("/definitions/adhesive/properties", "adhesives: {a: {KEY: }}\n");
    openings.put("/definitions/kind/properties", "pieces: {a: {KEY: }}\n");
    return openings;
  }

  /** Every word in quotes in the readers of the project: what may be a key is among them. */
  private static Set<String> words() throws IOException {
    Set<String> words = new TreeSet<>();
    for (String reader : List.of("ProjectReader", "PlanReader", "CatalogueReader")) {
      Path source = Path.of("src/main/java/ribband/journal/" + reader + ".java");
      Matcher word =
          Pattern.compile("\"([a-z]+(?: [a-z]+)*)\"")
              .matcher(Files.readString(source, StandardCharsets.UTF_8));
      while (word.find()) {
        words.add(word.group(1));
      }
    }
    return words;
  }

  @Test
  void theyKnowTheSameKeys() throws IOException {
    for (Map.Entry<String, String> opening : openings().entrySet()) {
      Set<String> known = new TreeSet<>();
      for (String word : words()) {
        boolean twice = opening.getValue().contains("id: a") && word.equals("id");
        String project = opening.getValue().replace("KEY", word);
        if (twice || told(project).stream().noneMatch(said -> said.startsWith("unknown key"))) {
          known.add(word);
        }
      }
      Set<String> listed = new TreeSet<>();
      tree().at(opening.getKey()).fieldNames().forEachRemaining(listed::add);
      assertEquals(known, listed, opening.getKey());
    }
  }

  @Test
  void everyListOfKeysIsOpenedByTheTestAbove() throws IOException {
    Set<String> lists = new TreeSet<>();
    lists("", tree(), lists);
    assertEquals(new TreeSet<>(openings().keySet()), lists);
  }

  private static void lists(String path, JsonNode at, Set<String> lists) {
    at.forEachEntry(
        (name, value) -> {
          if (name.equals("properties") && at.has("additionalProperties")) {
            lists.add(path + "/" + name);
          }
          lists(path + "/" + name, value, lists);
        });
  }

  @Test
  void everyKeyIsExplained() throws IOException {
    for (String list : openings().keySet()) {
      tree()
          .at(list)
          .forEachEntry(
              (key, value) -> assertNotEquals("", value.path("description").asText(), key));
    }
  }

  @Test
  void everyKindOfMistakeBeyondItIsOneThatItPassesOver() throws IOException {
    JsonSchema schema = schema();
    Set<Beyond> passed = EnumSet.noneOf(Beyond.class);
    for (String project : projects()) {
      if (said(schema, project).isEmpty()) {
        told(project).forEach(sentence -> passed.addAll(Beyond.of(sentence)));
      }
    }
    assertEquals(EnumSet.allOf(Beyond.class), passed);
  }
}
