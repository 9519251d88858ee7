package ribband.postcard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;

/** Faces of cards, invented. */
final class Faces {
  private static final long QUARTER = 900;
  private static final List<String> MONTHS =
      List.of("September 2026", "May 2026", "2026", "November 2025");

  private Faces() {}

  static Face usual() {
    return new Face(
        "Dunlin",
        "A 15-foot glued-lapstrake skiff for oar and sail",
        "March 2026",
        "26½",
        "hours",
        "third of 9 months with work, 232:35\u00a0hours to date",
        "9\u00a0nights",
        shares(52_200, 30_000, 12_600),
        "$412.60\u00a0went\u00a0out, $2,411.00\u00a0to\u00a0date",
        "4\u00a0of\u00a016\u00a0strakes");
  }

  /** No money, no phases, no rank, no pieces, nothing that may be left out. */
  static Face bare() {
    return new Face("Dunlin", "", "July 2026", "0", "", "", "", List.of(), "", "");
  }

  static List<Share> shares(long... seconds) {
    List<Share> shares = new ArrayList<>();
    for (long each : seconds) {
      String title = List.of("Planking", "Fairing", "Spars and rig").get(shares.size() % 3);
      shares.add(new Share(title, Saying.hours(new Hours(each)), each));
    }
    return shares;
  }

  /** Of one currency: every width of figures and words that a journal can bring about. */
  static Face strange(Currency currency, Random random) {
    long hours = 1 + random.nextInt(4939);
    return new Face(
        words(random, 1 + random.nextInt(9)),
        random.nextInt(4) == 0 ? "" : words(random, 1 + random.nextInt(20)),
        MONTHS.get(random.nextInt(MONTHS.size())),
        Saying.hours(new Hours(random.nextBoolean() ? hours * QUARTER : hours * QUARTER - 300)),
        random.nextBoolean() ? "hours" : "minutes",
        random.nextInt(5) == 0 ? "" : rank(random),
        random.nextInt(5) == 0 ? "" : Saying.counted(1 + random.nextInt(400), "night", "nights"),
        phases(random),
        random.nextInt(4) == 0 ? "" : money(currency, minor(random), minor(random)),
        random.nextInt(4) == 0
            ? ""
            : "3 strakes, 12 frames" + " and 1 knee".repeat(random.nextInt(5)));
  }

  private static long minor(Random random) {
    long minor = (long) Math.pow(10, random.nextInt(13)) - random.nextInt(2);
    return random.nextInt(9) == 0 ? -minor : minor;
  }

  /** As a card says what went out, and what did to date. */
  static String money(Currency currency, long minor, long toDate) {
    return (Saying.money(new Money(minor), currency)
            + " went out,\n"
            + Saying.money(new Money(toDate), currency)
            + " to date")
        .replace(' ', '\u00a0')
        .replace('\n', ' ');
  }

  private static String rank(Random random) {
    List<String> months = new ArrayList<>(List.of("October 2025", "June", "September", "August"));
    Collections.shuffle(months, random);
    return "9th of "
        + (9 + random.nextInt(90))
        + " months with work, level with "
        + Saying.list(months.subList(0, 1 + random.nextInt(3)))
        + " ("
        + Saying.list(months)
        + " and four more beat it)";
  }

  private static List<Share> phases(Random random) {
    List<Share> shares = new ArrayList<>();
    long seconds = QUARTER * 2000;
    for (int i = random.nextInt(9); i > 0; i--) {
      seconds = Math.max(1, (long) (seconds * random.nextDouble()));
      shares.add(new Share(title(random), Saying.hours(new Hours(seconds)), seconds));
    }
    return shares;
  }

  private static String title(Random random) {
    int letters = 1 + random.nextInt(80);
    return random.nextInt(4) == 0
        ? "Wm".repeat(30)
        : words(random, 60).substring(0, letters).replaceAll("^ | $", "x");
  }

  private static String words(Random random, int count) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < count; i++) {
      words.append(i == 0 ? "" : " ");
      int letters = random.nextInt(12) == 0 ? 60 : 1 + random.nextInt(11);
      for (int j = 0; j < letters; j++) {
        words.append((char) ((j == 0 ? 'A' : 'a') + random.nextInt(26)));
      }
    }
    return words.toString();
  }
}
