package ribband.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The clock, the time zone, the locale, the charset and chance come in from outside; the disk is
 * written in few places; figures are exact. Calls count, and so do method references.
 */
class SurroundingsTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("ribband");

  /** A method or constructor of somebody else's, as it is called. */
  private record Use(String user, String owner, String name, List<String> parameters) {
    static Use of(JavaCodeUnitAccess<?> access) {
      return new Use(
          access.getOriginOwner().getName(),
          access.getTargetOwner().getName(),
          access.getTarget().getName(),
          access.getTarget().getRawParameterTypes().stream().map(JavaClass::getName).toList());
    }

    boolean isOf(Class<?> type, String... names) {
      return owner.equals(type.getName()) && List.of(names).contains(name);
    }

    boolean takes(Class<?> type) {
      return parameters.contains(type.getName());
    }

    boolean isBare() {
      return parameters.isEmpty();
    }
  }

  private static Stream<Use> uses(JavaClass user) {
    return Stream.concat(
            user.getCodeUnitCallsFromSelf().stream(), user.getCodeUnitReferencesFromSelf().stream())
        .map(Use::of);
  }

  private static Set<String> users(Predicate<Use> wanted) {
    return users(CLASSES, wanted);
  }

  private static Set<String> users(JavaClasses classes, Predicate<Use> wanted) {
    Set<String> users = new TreeSet<>();
    classes.stream()
        .flatMap(SurroundingsTest::uses)
        .filter(wanted)
        .forEach(use -> users.add(use.user().replaceFirst("\\$.*", "")));
    return users;
  }

  /** A leash only measures how long a text takes; no figure comes of it. */
  @Test
  void theClockIsReadInOnePlace() {
    assertEquals(
        Set.of("ribband.cli.Surroundings", "ribband.prose.Leash"),
        users(SurroundingsTest::readsTheClock));
  }

  private static boolean readsTheClock(Use use) {
    return use.owner().startsWith("java.time.")
            && use.name().equals("now")
            && !use.takes(java.time.Clock.class)
        || use.isOf(java.time.Clock.class, "systemDefaultZone", "systemUTC", "system", "tick")
        || use.isOf(java.time.ZoneId.class, "systemDefault")
        || use.isOf(java.util.Date.class, "<init>") && use.isBare()
        || use.isOf(java.util.TimeZone.class, "getDefault")
        || use.isOf(System.class, "currentTimeMillis", "nanoTime");
  }

  @Test
  void localesAndCharsetsAreNamed() {
    assertEquals(Set.of(), users(SurroundingsTest::leavesLocaleOrCharset));
  }

  private static boolean leavesLocaleOrCharset(Use use) {
    return use.isOf(java.util.Locale.class, "getDefault")
        || use.isOf(java.nio.charset.Charset.class, "defaultCharset")
        || use.isOf(String.class, "toLowerCase", "toUpperCase", "getBytes") && use.isBare()
        || use.isOf(String.class, "format") && !use.takes(java.util.Locale.class)
        || use.isOf(String.class, "formatted")
        || use.isOf(String.class, "<init>")
            && use.takes(byte[].class)
            && !use.takes(java.nio.charset.Charset.class)
        || use.isOf(java.io.ByteArrayOutputStream.class, "toString") && use.isBare()
        || use.isOf(java.text.Collator.class, "getInstance") && use.isBare()
        || use.owner().startsWith("java.text.") && use.owner().endsWith("Format")
        || use.isOf(java.time.format.DateTimeFormatter.class, "ofPattern")
            && !use.takes(java.util.Locale.class)
        || readsOrWritesText(use) && !use.takes(java.nio.charset.Charset.class);
  }

  private static boolean readsOrWritesText(Use use) {
    return use.isOf(
            java.nio.file.Files.class,
            "readString",
            "readAllLines",
            "lines",
            "writeString",
            "newBufferedReader",
            "newBufferedWriter")
        || use.isOf(java.io.InputStreamReader.class, "<init>")
        || use.isOf(java.io.OutputStreamWriter.class, "<init>")
        || use.isOf(java.io.FileReader.class, "<init>")
        || use.isOf(java.io.FileWriter.class, "<init>")
        || use.isOf(java.util.Scanner.class, "<init>");
  }

  @Test
  void chanceHasOneSeed() {
    assertEquals(Set.of("ribband.ahead.Ahead"), users(SurroundingsTest::takesAChance));
  }

  /** Draws from a source that is handed in are no chance: whoever made it gave it its seed. */
  private static boolean takesAChance(Use use) {
    return use.isOf(Math.class, "random")
        || use.owner().startsWith("java.util.")
            && use.owner().contains("Random")
            && !use.isOf(RandomGenerator.class, "nextInt")
        || use.owner().equals("java.security.SecureRandom")
        || use.isOf(java.util.UUID.class, "randomUUID")
        || use.isOf(System.class, "identityHashCode");
  }

  @Test
  void fewWriteToTheDisk() {
    Set<String> writers = new TreeSet<>();
    users(SurroundingsTest::writes).forEach(name -> writers.add(name.replaceFirst("\\.\\w+$", "")));
    assertEquals(
        Set.of("ribband.desk", "ribband.memory", "ribband.photo", "ribband.press", "ribband.cli"),
        writers);
    // A report of a defect, the streams that the terminal hands in, and the manual when a package
    // is made.
    assertEquals(
        Set.of("ribband.cli.Failures", "ribband.cli.HelpFiles", "ribband.cli.Surroundings"),
        users(use -> writes(use) && use.user().startsWith("ribband.cli.")));
  }

  private static boolean writes(Use use) {
    return use.isOf(
            java.nio.file.Files.class,
            "write",
            "writeString",
            "newOutputStream",
            "newBufferedWriter",
            "copy",
            "move",
            "delete",
            "deleteIfExists",
            "createFile",
            "createDirectory",
            "createDirectories",
            "createTempFile",
            "createTempDirectory",
            "createLink",
            "createSymbolicLink",
            "setLastModifiedTime",
            "setAttribute",
            "setPosixFilePermissions")
        || use.isOf(java.nio.channels.FileChannel.class, "open")
        || use.isOf(java.io.RandomAccessFile.class, "<init>")
        || use.isOf(java.io.FileOutputStream.class, "<init>")
        || use.isOf(java.io.FileWriter.class, "<init>")
        || use.isOf(
            java.io.File.class,
            "delete",
            "renameTo",
            "mkdir",
            "mkdirs",
            "createNewFile",
            "setLastModified");
  }

  @Test
  void figuresAreExact() {
    List<String> inexact = new ArrayList<>();
    Set<String> types =
        Set.of("double", "float", "java.lang.Double", "java.lang.Float", "[D", "[F");
    for (JavaClass owner : CLASSES) {
      if (Set.of("ribband.measure", "ribband.journal", "ribband.ledger")
          .contains(owner.getPackageName())) {
        for (JavaField field : owner.getFields()) {
          if (types.contains(field.getRawType().getName())) {
            inexact.add(field.getFullName());
          }
        }
        for (JavaCodeUnit unit : owner.getCodeUnits()) {
          List<String> named =
              new ArrayList<>(
                  unit.getRawParameterTypes().stream().map(JavaClass::getName).toList());
          named.add(unit.getRawReturnType().getName());
          if (named.stream().anyMatch(types::contains)) {
            inexact.add(unit.getFullName());
          }
        }
        uses(owner)
            .filter(
                use ->
                    types.stream().anyMatch(use.parameters()::contains)
                        || types.contains(use.owner())
                        || use.name().matches("(double|float)Value|divideToDouble"))
            .forEach(use -> inexact.add(use.toString()));
      }
    }
    assertEquals(List.of(), inexact);
  }

  /** Does all that is looked for, so that a rule that finds nothing is known to look. */
  @SuppressWarnings("unused")
  private static final class Careless {
    Object clock() {
      return java.time.LocalDate.now(java.time.ZoneId.of("UTC"));
    }

    Object locale() {
      return Stream.of("a").map(String::toUpperCase).toList();
    }

    Object chance() {
      return new java.util.SplittableRandom();
    }

    void disk(java.nio.file.Path file) throws java.io.IOException {
      java.nio.file.Files.delete(file);
    }
  }

  @Test
  void aCarelessClassIsFound() {
    JavaClasses careless = new ClassFileImporter().importClasses(Careless.class);
    Set<String> found = Set.of(SurroundingsTest.class.getName());
    assertEquals(found, users(careless, SurroundingsTest::readsTheClock));
    assertEquals(found, users(careless, SurroundingsTest::leavesLocaleOrCharset));
    assertEquals(found, users(careless, SurroundingsTest::takesAChance));
    assertEquals(found, users(careless, SurroundingsTest::writes));
  }
}
