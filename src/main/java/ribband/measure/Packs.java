package ribband.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A bought amount: {@code 1 qt}, or {@code 2 of 1 qt} for two packs.
 *
 * @param count how many packs, 1 or more
 * @param pack what is in one
 */
public record Packs(int count, Quantity pack) {
  private static final Pattern SEVERAL = Pattern.compile("([1-9][0-9]{0,3}) of (.+)");

  public Packs {
    if (count < 1) {
      throw new IllegalArgumentException("packs: " + count);
    }
  }

  public static Packs read(String text) throws Unreadable {
    Matcher several = SEVERAL.matcher(text.strip());
    return several.matches()
        ? new Packs(Integer.parseInt(several.group(1)), Quantity.read(several.group(2)))
        : new Packs(1, Quantity.read(text));
  }

  public Quantity total() {
    return pack.times(count);
  }
}
