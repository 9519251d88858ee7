package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import ribband.problem.Problem;

/** How problems are told, whatever they are about. */
final class Lines {
  private Lines() {}

  /** Fails where a problem is not one line, or stands where its file has no line. */
  static void stand(Problem problem, List<String> files, byte[] bytes) {
    String told = problem.toString();
    assertFalse(told.chars().anyMatch(Character::isISOControl), told);
    assertTrue(problem.sentence().contains(";"), () -> "says no cure: " + told);
    assertTrue(files.contains(problem.place().file()), told);
    long lines = new String(bytes, StandardCharsets.UTF_8).lines().count() + 1;
    assertTrue(problem.place().line() <= lines, () -> told + ", of " + lines + " lines");
  }
}
