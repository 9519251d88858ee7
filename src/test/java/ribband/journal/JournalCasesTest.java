package ribband.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import ribband.problem.Problem;

/**
 * The cases of {@code src/test/resources/ribband/journal} and all examples of {@code
 * docs/journal-format.md}, each read with LF, with CRLF and with a byte-order mark, under four
 * locales.
 */
class JournalCasesTest {
  private final Locale locale = Locale.getDefault();
  @TempDir Path folder;
  private int count;

  /** A way of saving the same text, and the locale of the machine that reads it. */
  private record Form(String mark, String lineEnd, Locale locale) {
    String of(String text) {
      return mark + text.replace("\n", lineEnd);
    }
  }

  private static final List<Form> FORMS =
      List.of(
          new Form("", "\n", Locale.ENGLISH),
          new Form("", "\r\n", Locale.forLanguageTag("tr")),
          new Form("\uFEFF", "\n", Locale.forLanguageTag("ar-EG-u-nu-arab")),
          new Form("\uFEFF", "\r\n", Locale.GERMANY));

  @AfterEach
  @BeforeEach
  void restoreLocale() {
    Locale.setDefault(locale);
  }

  @TestFactory
  Stream<DynamicContainer> casesOfTheResourceFiles() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/ribband/journal"))) {
      return files.sorted().map(this::document).toList().stream();
    }
  }

  @TestFactory
  DynamicContainer examplesOfTheJournalFormat() {
    return document(Path.of("docs/journal-format.md"));
  }

  private DynamicContainer document(Path file) {
    List<JournalCase> cases = JournalCase.of(text(file));
    assertFalse(cases.isEmpty(), "no case in " + file);
    return DynamicContainer.dynamicContainer(
        file.getFileName().toString(),
        cases.stream().map(c -> DynamicTest.dynamicTest(c.title(), () -> check(file, c))));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void check(Path document, JournalCase wanted) throws IOException {
    for (Form form : FORMS) {
      Locale.setDefault(form.locale());
      Path root = folder.resolve("journal-" + count++);
      Map<String, String> saved = new LinkedHashMap<>();
      wanted.files().forEach((file, text) -> saved.put(file, form.of(text)));
      JournalFiles.write(root, saved);
      JournalReader.Read read = JournalFiles.read(root);
      if (wanted.problems().isEmpty()) {
        assertEquals(List.of(), read.problems().stream().filter(Problem::isError).toList());
      }
      String where = document + ":" + wanted.line() + " as " + form + "\n" + wanted.files();
      wanted
          .problems()
          .ifPresent(
              told ->
                  assertEquals(
                      String.join("\n", told),
                      String.join("\n", told(read, wanted, told)),
                      () -> "problems of " + where));
      wanted
          .figures()
          .ifPresent(
              figures ->
                  assertEquals(
                      String.join("\n", figures),
                      String.join("\n", figures(read, figures)),
                      () -> "figures of " + where + "\n" + read.problems()));
    }
  }

  private static List<String> told(
      JournalReader.Read read, JournalCase wanted, List<String> lines) {
    if (wanted.source() == JournalCase.Source.BLOCKS) {
      return JournalFiles.told(read);
    }
    boolean placed = lines.stream().anyMatch(line -> line.matches("[0-9]+:[0-9]+: .*"));
    return read.problems().stream()
        .map(problem -> placed ? withoutFile(problem) : sentence(problem))
        .toList();
  }

  private static String withoutFile(Problem problem) {
    return problem.toString().substring(problem.place().file().length() + 1);
  }

  private static String sentence(Problem problem) {
    return (problem.isError() ? "" : "warning: ") + problem.sentence();
  }

  private static List<String> figures(JournalReader.Read read, List<String> wanted) {
    boolean named = wanted.stream().anyMatch(line -> line.startsWith("2026-"));
    return read.journal().entries().stream()
        .flatMap(
            entry -> {
              Stream<String> figures = Figures.of(entry, read.journal().project()).stream();
              return named
                  ? Stream.concat(Stream.of(entry.address() + ": " + entry.title()), figures)
                  : figures;
            })
        .toList();
  }
}
