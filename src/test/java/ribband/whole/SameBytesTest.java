package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.cli.InMemory;

/** The same journal gives the same bytes, wherever, however often and on how many cores. */
class SameBytesTest {
  @TempDir private Path folder;
  @TempDir private Path other;

  private InMemory.Run publish() throws IOException {
    return new Builder(folder).run("publish");
  }

  @Test
  void forgettingChangesNoByte() throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> before = new Published(folder.resolve("site")).hashes();
    for (Path file : Published.filesOf(folder.resolve(".ribband"))) {
      Files.delete(file);
    }

    assertEquals(0, publish().code());
    assertEquals(before, new Published(folder.resolve("site")).hashes());
  }

  @ParameterizedTest
  @CsvSource({
    "tr, Asia/Tokyo",
    "ar-EG, Pacific/Kiritimati",
    "de, Pacific/Niue",
    "th-TH-u-ca-buddhist, UTC"
  })
  void sameBytesUnderOtherSkies(String language, String zone) throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> here = new Published(folder.resolve("site")).hashes();
    Locale locale = Locale.getDefault();
    TimeZone time = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      Path there = other.resolve("site");
      assertEquals(0, new Builder(folder).run("publish", "-o", there.toString()).code());
      assertEquals(here, new Published(there).hashes());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(time);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void sameBytesOnAnyNumberOfCores(int cores) throws IOException, InterruptedException {
    FullJournal.write(folder);
    publish();
    Path site = other.resolve("site");

    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:ActiveProcessorCount=" + cores,
                "-cp",
                System.getProperty("java.class.path"),
                "ribband.cli.Main",
                "publish",
                folder.toString(),
                "--today",
                "2026-06-01",
                "-o",
                site.toString())
            .redirectErrorStream(true)
            .start();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertEquals(0, process.waitFor(), told);
    assertEquals(new Published(folder.resolve("site")).hashes(), new Published(site).hashes());
  }

  @Test
  void lineEndsMakeNoDifference() throws IOException {
    FullJournal.write(folder);
    publish();
    Map<String, String> before = new Published(folder.resolve("site")).hashes();
    for (Path file : Published.filesOf(folder.resolve("2026"))) {
      if (file.toString().endsWith(".md")) {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        Files.writeString(file, "\uFEFF" + text.replace("\n", "\r\n"), StandardCharsets.UTF_8);
      }
    }

    assertEquals(0, publish().code());
    assertEquals(before, new Published(folder.resolve("site")).hashes());
  }

  @Test
  void csvIsByteForByteWhatTallyPrints() throws IOException {
    FullJournal.write(folder);
    publish();
    Published site = new Published(folder.resolve("site"));

    assertEquals(
        new Builder(folder).run("tally", "--format", "csv").out(), site.text("months.csv"));
    assertEquals(
        new Builder(folder).run("tally", "--by", "phase", "--format", "csv").out(),
        site.text("phases.csv"));
    assertNotEquals("", site.text("months.csv"));
  }
}
