package ribband.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Data flows one way, and each library has one user. */
class FlowTest {
  /** Each package may use only those before it. The table stands in DEVELOPERS.md. */
  private static final List<String> FLOW =
      List.of(
          "problem", "measure", "memory", "journal", "prose", "photo", "album", "ledger", "chart",
          "site", "press", "desk", "cli");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("ribband");

  @Test
  void everyPackageIsInTheFlow() {
    TreeSet<String> found = new TreeSet<>();
    CLASSES.forEach(c -> found.add(c.getPackageName().replaceFirst("^ribband\\.?", "")));
    assertEquals(new TreeSet<>(FLOW), found);
  }

  @Test
  void theTableForContributorsIsTheFlow() throws IOException {
    String table = Files.readString(Path.of("DEVELOPERS.md"), StandardCharsets.UTF_8);
    Matcher rows = Pattern.compile("(?m)^\\| `([a-z]+)` \\| ").matcher(table);
    List<String> listed = new ArrayList<>();
    while (rows.find()) {
      if (FLOW.contains(rows.group(1))) {
        listed.add(rows.group(1));
      }
    }
    assertEquals(FLOW, listed);
  }

  @Test
  void packagesUseOnlyThoseAboveThem() {
    for (int i = 0; i < FLOW.size(); i++) {
      String[] later =
          FLOW.subList(i + 1, FLOW.size()).stream().map(FlowTest::packageOf).toArray(String[]::new);
      if (later.length > 0) {
        noClasses()
            .that()
            .resideInAPackage(packageOf(FLOW.get(i)))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(later)
            .check(CLASSES);
      }
    }
  }

  @Test
  void proseAndPhotoAndChartAndPressKnowNoJournal() {
    noClasses()
        .that()
        .resideInAnyPackage("ribband.prose", "ribband.photo", "ribband.chart", "ribband.memory")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("ribband.journal", "ribband.album", "ribband.ledger")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage("ribband.chart")
        .should()
        .dependOnClassesThat(
            resideInAPackage("ribband..")
                .and(not(resideInAPackage("ribband.chart")))
                .and(not(resideInAPackage("ribband.measure"))))
        .check(CLASSES);
  }

  @Test
  void eachLibraryHasItsUsers() {
    onlyUser("com.vladsch.flexmark..", "ribband.prose");
    onlyUser("org.owasp..", "ribband.prose");
    onlyUser("org.yaml..", "ribband.journal");
    onlyUser("com.fasterxml.jackson.dataformat..", "ribband.journal");
    onlyUser("com.fasterxml..", "ribband.journal", "ribband.cli");
    onlyUser("net.coobird..", "ribband.photo");
    onlyUser("com.drew..", "ribband.photo");
    onlyUser("javax.imageio..", "ribband.photo");
    onlyUser("io.pebbletemplates..", "ribband.site");
    onlyUser("picocli..", "ribband.cli");
    onlyUser("org.apache.commons.csv..", "ribband.ledger");
    onlyUser("org.apache.commons.text..", "ribband.problem");
  }

  private static void onlyUser(String library, String... users) {
    noClasses()
        .that()
        .resideOutsideOfPackages(users)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(CLASSES);
  }

  @Test
  void noFiguresAreDoubles() {
    for (String name : List.of("measure", "journal", "ledger")) {
      for (JavaField field : CLASSES.stream().flatMap(c -> c.getFields().stream()).toList()) {
        if (field.getOwner().getPackageName().equals(packageOf(name))) {
          String type = field.getRawType().getName();
          assertTrue(!type.equals("double") && !type.equals("float"), field.getFullName());
        }
      }
      noClasses()
          .that()
          .resideInAPackage(packageOf(name))
          .should()
          .dependOnClassesThat()
          .haveFullyQualifiedName(Double.class.getName())
          .check(CLASSES);
    }
  }

  @Test
  void clockZoneAndLocaleComeInFromOutside() {
    noClasses()
        .that()
        .resideOutsideOfPackage("ribband.cli")
        .should()
        .callMethod(LocalDate.class, "now")
        .orShould()
        .callMethod(LocalDateTime.class, "now")
        .orShould()
        .callMethod(Clock.class, "systemDefaultZone")
        .orShould()
        .callMethod(Clock.class, "systemUTC")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(Locale.class, "getDefault")
        .orShould()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "toLowerCase")
        .orShould()
        .callMethod(String.class, "toUpperCase")
        .orShould()
        .callMethod(String.class, "getBytes")
        .orShould()
        .callConstructor(String.class, byte[].class)
        .check(CLASSES);
  }

  @Test
  void onlyThePressAndItsLikeWriteFiles() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "ribband.press", "ribband.memory", "ribband.photo", "ribband.desk", "ribband.cli")
        .should()
        .callMethod(
            Files.class, "write", Path.class, byte[].class, java.nio.file.OpenOption[].class)
        .orShould()
        .callMethod(Files.class, "delete", Path.class)
        .orShould()
        .callMethod(Files.class, "deleteIfExists", Path.class)
        .orShould()
        .callMethod(Files.class, "move", Path.class, Path.class, java.nio.file.CopyOption[].class)
        .orShould()
        .callMethod(Files.class, "newOutputStream", Path.class, java.nio.file.OpenOption[].class)
        .check(CLASSES);
  }

  /**
   * Prose writes through its library's writer and lists what it lets through; nobody joins markup.
   */
  @Test
  void javaHoldsNoMarkup() throws IOException {
    Pattern markup = Pattern.compile("\"[^\"\\n]*</?[a-z][a-z0-9]*[ >/][^\"\\n]*\"");
    List<String> found = new ArrayList<>();
    for (Path file : sources(Path.of("src/main/java/ribband"), ".java")) {
      String text =
          Files.readString(file, StandardCharsets.UTF_8).replaceAll("(?m)^ *(/?\\*|//).*$", "");
      Matcher matcher = markup.matcher(text);
      while (matcher.find()) {
        // The YAML parser's own words for where it stopped.
        if (matcher.group().matches(".*<(block end|document start)>.*")) {
          continue;
        }
        found.add(file.getFileName() + ": " + matcher.group());
      }
    }
    assertEquals(List.of(), found);
  }

  /** What is put into a page unescaped has come through the sanitizer. */
  @Test
  void templatesTrustSanitizedProseAlone() throws IOException {
    List<String> raw = new ArrayList<>();
    List<String> unquoted = new ArrayList<>();
    for (Path file : sources(Path.of("site-template"), ".peb")) {
      String text = Files.readString(file, StandardCharsets.UTF_8).replaceAll("(?s)\\{#.*?#}", "");
      Matcher uses = Pattern.compile("\\{\\{([^}]*)\\| *raw *}}").matcher(text);
      while (uses.find()) {
        raw.add(file.getFileName() + ":" + uses.group(1));
      }
      Matcher bare = Pattern.compile("[a-z-]+=\\{\\{|\\s(style|on[a-z]+)=").matcher(text);
      while (bare.find()) {
        unquoted.add(file.getFileName() + ": " + bare.group());
      }
    }
    assertEquals(List.of("entry.peb: page.html ", "home.peb: page.about "), raw);
    assertEquals(List.of(), unquoted);
  }

  private static List<Path> sources(Path root, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static String packageOf(String name) {
    return "ribband." + name;
  }
}
