package ribband.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The start scripts of Unix and of Windows say the same to Java. */
class StartScriptsTest {
  private static String read(String file) throws IOException {
    return Files.readString(Path.of("src/main/app").resolve(file), StandardCharsets.UTF_8);
  }

  private static Set<String> toldToJava(String script) {
    return Pattern.compile("-XX:[A-Za-z]+=|-Xmx|-jar|-m ribband/ribband.cli.Main|java-options")
        .matcher(script)
        .results()
        .map(found -> found.group())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void bothSayTheSameToJava() throws IOException {
    Set<String> unix = toldToJava(read("bin/ribband"));
    assertEquals(6, unix.size(), unix.toString());
    assertEquals(unix, toldToJava(read("bin/ribband.cmd")));
    for (String fact :
        Set.of("640m", "RIBBAND_HEAP", "JAVA_HOME", "watch", "no Java found; install a Java 17")) {
      assertTrue(read("bin/ribband").contains(fact), fact);
      assertTrue(read("bin/ribband.cmd").contains(fact), fact);
    }
  }

  @Test
  void theOneForWindowsIsPlainAsciiWithItsLineEnds() throws IOException {
    String script = read("bin/ribband.cmd");
    assertFalse(script.replace("\r\n", "").matches("(?s).*[\r\n].*"));
    assertTrue(script.chars().allMatch(letter -> letter < 128));
    assertTrue(script.endsWith("exit /b %code%\r\n"));
  }

  /** A path may hold blanks, brackets and ampersands. */
  @Test
  void theOneForWindowsQuotesEveryPath() throws IOException {
    for (String line : read("bin/ribband.cmd").lines().toList()) {
      String unquoted = line.replaceAll("\"[^\"]*\"", "");
      assertFalse(unquoted.matches(".*%(app|java|JAVA_HOME|~dp0).*"), line);
    }
  }
}
