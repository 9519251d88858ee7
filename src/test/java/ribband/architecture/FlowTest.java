package ribband.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Data flows one way, and each library has one user. */
class FlowTest {
  /** Each package may use only those before it. The table stands in docs/architecture.md. */
  private static final List<String> FLOW =
      List.of(
          "problem",
          "measure",
          "shop",
          "memory",
          "journal",
          "prose",
          "photo",
          "album",
          "ledger",
          "pieces",
          "joints",
          "stock",
          "plan",
          "nights",
          "jobs",
          "ahead",
          "recap",
          "chart",
          "site",
          "telling",
          "postcard",
          "feed",
          "press",
          "spoken",
          "card",
          "past",
          "desk",
          "preview",
          "cli");

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
  void theTableOfTheArchitectureIsTheFlow() throws IOException {
    assertEquals(FLOW, listed("docs/architecture.md", "(?m)^\\| `([a-z]+)` \\| "));
  }

  @Test
  void theDrawingHasAStationForEachPackageInTheOrderOfTheFlow() throws IOException {
    assertEquals(FLOW, listed("docs/architecture.svg", "<text class=\"package\"[^>]*>([a-z]+)<"));
  }

  private static List<String> listed(String document, String pattern) throws IOException {
    String text = Files.readString(Path.of(document), StandardCharsets.UTF_8);
    return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1)).toList();
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
    onlyUser("com.fasterxml..", "ribband.journal", "ribband.site", "ribband.feed", "ribband.cli");
    onlyUser("net.coobird..", "ribband.photo", "ribband.postcard");
    onlyUser("com.drew..", "ribband.photo");
    onlyUser("javax.imageio..", "ribband.photo", "ribband.postcard");
    onlyUser("org.apache.fontbox..", "ribband.postcard");
    onlyUser("org.apache.pdfbox..", "ribband.postcard");
    onlyUser("io.pebbletemplates..", "ribband.site");
    onlyUser("picocli..", "ribband.cli");
    onlyUser("org.apache.commons.csv..", "ribband.ledger", "ribband.past");
    onlyUser("org.apache.commons.text..", "ribband.problem");
    onlyUser("biweekly..", "ribband.joints");
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

  private static String packageOf(String name) {
    return "ribband." + name;
  }
}
