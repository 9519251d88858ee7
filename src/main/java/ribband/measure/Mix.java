package ribband.measure;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How an adhesive's two parts go together: {@code 2 to 1 by volume}. */
public record Mix(Proportion parts, By by) {
  private static final Pattern WRITTEN = Pattern.compile("(.+?)\\s+by\\s+(volume|weight)");
  private static final String EXAMPLE = "2 to 1 by volume";

  /** What the parts are measured by. */
  public enum By {
    VOLUME,
    WEIGHT
  }

  public static Mix read(String text) throws Unreadable {
    Matcher written = WRITTEN.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!written.matches()) {
      throw new Unreadable(
          "does not say how it is mixed", "write " + EXAMPLE + " or 100 to 42 by weight");
    }
    By by = By.valueOf(written.group(2).toUpperCase(Locale.ROOT));
    return new Mix(Proportion.read(written.group(1), EXAMPLE), by);
  }
}
