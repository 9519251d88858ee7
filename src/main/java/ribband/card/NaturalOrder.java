package ribband.card;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Name;

/** Numbers in names by their value, so that 2 comes before 10; capitals like small letters. */
final class NaturalOrder {
  private static final Pattern PART = Pattern.compile("[0-9]+|[^0-9]");
  private static final Pattern NUMBER = Pattern.compile("0*([0-9]+)");

  private NaturalOrder() {}

  /** As a comparator tells it; 0 for the same name only. */
  static int compare(String one, String other) {
    Matcher ones = PART.matcher(Name.plain(one));
    Matcher others = PART.matcher(Name.plain(other));
    while (ones.find()) {
      if (!others.find()) {
        return 1;
      }
      int order = parts(ones.group(), others.group());
      if (order != 0) {
        return order;
      }
    }
    return others.find() ? -1 : one.compareTo(other);
  }

  private static int parts(String one, String other) {
    Matcher number = NUMBER.matcher(one);
    Matcher otherNumber = NUMBER.matcher(other);
    if (!number.matches() || !otherNumber.matches()) {
      return one.compareTo(other);
    }
    String figures = number.group(1);
    String otherFigures = otherNumber.group(1);
    int longer = Integer.compare(figures.length(), otherFigures.length());
    return longer == 0 ? figures.compareTo(otherFigures) : longer;
  }
}
