package ribband.ledger;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * A journal written at random, beside the plain facts that its figures must come to. The facts
 * never pass through the program's own reading.
 */
public final class GeneratedJournal {
  public static final List<String> PHASES =
      List.of("lofting", "backbone", "planking", "side-decks", "varnish");
  static final String UNSORTED = "unsorted";

  /** An entry: where it stands, seconds by phase, minor units by phase, purchases, pieces. */
  public record Fact(
      String file,
      LocalDate day,
      String address,
      Map<String, Long> work,
      Map<String, Long> money,
      List<Paid> bought,
      List<Pieces> pieces) {}

  /** A purchase: an item, or a cost that names none; below zero for a refund. */
  public record Paid(String phase, long minor, String what) {}

  /**
   * Pieces made.
   *
   * @param phase of their kind, or of the entry where that has none
   */
  public record Pieces(String phase, String kind, int count) {}

  public final String currency;
  public final int digits;
  public final List<Fact> facts = new ArrayList<>();
  public final Map<String, Long> carriedWork = new TreeMap<>();
  public final Map<String, Long> carriedMoney = new TreeMap<>();
  public final int carriedSessions;

  private final SplittableRandom random;
  private int strakesMade;

  private GeneratedJournal(long seed) {
    random = new SplittableRandom(seed);
    currency = List.of("USD", "JPY", "KWD").get((int) Math.floorMod(seed, 3L));
    digits = Map.of("USD", 2, "JPY", 0, "KWD", 3).get(currency);
    carriedSessions = random.nextBoolean() ? random.nextInt(1, 30) : 0;
  }

  /** Writes the journal of one seed into an empty folder. */
  public static GeneratedJournal write(Path folder, long seed, int entries) throws IOException {
    GeneratedJournal journal = new GeneratedJournal(seed);
    journal.writeProject(folder);
    LocalDate day = LocalDate.of(2022, 11, 3).plusDays(journal.random.nextInt(60));
    for (int i = 0; i < entries; i++) {
      journal.writeEntry(folder, day, i);
      // Now and then a winter without a boat: whole months and a turn of the year stand empty.
      day = day.plusDays(journal.random.nextInt(25) == 0 ? 75 : journal.random.nextInt(6));
    }
    return journal;
  }

  private void writeProject(Path folder) throws IOException {
    StringBuilder text =
        new StringBuilder("name: Generated\ncurrency: " + currency + "\nphases:\n");
    for (String phase : PHASES) {
      text.append("  - {id: ").append(phase).append(", hours: 80, cost: 500}\n");
    }
    text.append("pieces:\n  strakes: {total: 9999, phase: planking}\n  plugs: {total: 9999}\n");
    if (carriedSessions > 0) {
      String hours = hours("planking", carriedWork);
      long paid = random.nextLong(1, 90_000);
      carriedMoney.put("lofting", paid);
      text.append("carried:\n  through: 2022-10-31\n  sessions: ").append(carriedSessions);
      text.append("\n  hours: {planking: ").append(hours);
      text.append("}\n  cost: {lofting: ").append(decimal(paid)).append("}\n");
    }
    Files.writeString(folder.resolve("project.yaml"), text, StandardCharsets.UTF_8);
  }

  private void writeEntry(Path folder, LocalDate day, int number) throws IOException {
    String name = day + "-" + (number % 7 == 0 ? "é" : "n") + number;
    String file = (random.nextInt(4) == 0 ? "" : day.getYear() + "/") + name + ".md";
    Fact fact =
        new Fact(
            file,
            day,
            name,
            new LinkedHashMap<>(),
            new LinkedHashMap<>(),
            new ArrayList<>(),
            new ArrayList<>());
    boolean sorted = random.nextInt(12) != 0;
    String own = sorted ? phase() : UNSORTED;
    StringBuilder text = new StringBuilder("---\n");
    if (sorted) {
      text.append("phase: ")
          .append(own.replace('-', random.nextBoolean() ? ' ' : '_'))
          .append('\n');
    }
    text.append(work(own, fact.work()));
    text.append(money(own, fact, "Night " + number));
    text.append(pieces(own, fact.pieces()));
    text.append("title: Night ").append(number).append('\n');
    text.append(random.nextInt(6) == 0 ? "private: true\n" : "");
    text.append("---\nWords.\n");
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text, StandardCharsets.UTF_8);
    fact.money().values().removeIf(minor -> minor == 0);
    facts.add(fact);
  }

  private String phase() {
    return PHASES.get(random.nextInt(PHASES.size()));
  }

  private String work(String own, Map<String, Long> work) {
    return switch (random.nextInt(5)) {
      case 0 -> "";
      case 1 ->
          "hours: {planking: "
              + hours("planking", work)
              + ", varnish: "
              + hours("varnish", work)
              + "}\n";
      default -> "hours: " + hours(own, work) + "\n";
    };
  }

  /** A length of time in one of the ways it may be written. */
  private String hours(String phase, Map<String, Long> work) {
    int minutes = random.nextInt(1, 300);
    int quarters = random.nextInt(1, 20);
    int tenThousandths = random.nextInt(1, 50_000);
    String clocked = minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
    return switch (random.nextInt(4)) {
      case 0 -> put(work, phase, minutes * 60L, clocked);
      case 1 -> put(work, phase, minutes * 60L, minutes + " min");
      case 2 -> put(work, phase, quarters * 900L, quarters / 4 + " " + quarters % 4 + "/4");
      // 0.0001 h is 0.36 s: to the nearest second, a half up.
      default ->
          put(
              work,
              phase,
              (tenThousandths * 36L + 50) / 100,
              BigDecimal.valueOf(tenThousandths, 4).toPlainString());
    };
  }

  private static String put(Map<String, Long> sums, String phase, long amount, String written) {
    if (amount != 0) {
      sums.merge(phase, amount, Long::sum);
    }
    return written;
  }

  /** Strakes are of the planking, plugs of their entry's phase; a scrapped one is taken back. */
  private String pieces(String own, List<Pieces> made) {
    return switch (random.nextInt(4)) {
      case 0 -> {
        int strakes = random.nextInt(10) == 0 && strakesMade > 0 ? -1 : random.nextInt(1, 9);
        int plugs = random.nextInt(1, 9);
        made.add(new Pieces("planking", "strakes", strakes));
        made.add(new Pieces(own, "plugs", plugs));
        strakesMade += strakes;
        yield "pieces: {strakes: " + strakes + ", plugs: " + plugs + "}\n";
      }
      default -> "";
    };
  }

  private String money(String own, Fact fact, String title) {
    Map<String, Long> money = fact.money();
    List<Paid> bought = fact.bought();
    long some = random.nextLong(1, 30_000);
    long more = random.nextLong(1, 30_000);
    String item = "materials:\n  bought:\n    - {item: screws, from: the chandlery, cost: ";
    return switch (random.nextInt(8)) {
      case 0 -> {
        bought.add(new Paid(own, some, title));
        yield "cost: " + put(money, own, some, decimal(some)) + "\n";
      }
      case 1 -> "cost: " + put(money, own, -some, decimal(-some)) + "\n";
      case 2 -> {
        bought.add(new Paid("planking", some, title));
        yield "cost: {planking: "
            + put(money, "planking", some, decimal(some))
            + ", lofting: "
            + put(money, "lofting", -more, decimal(-more))
            + "}\n";
      }
      case 3 -> {
        bought.add(new Paid(own, some, "screws"));
        bought.add(new Paid("varnish", -more, "returned"));
        yield item
            + put(money, own, some, decimal(some))
            + "}\n    - {item: returned, phase: varnish, cost: "
            + put(money, "varnish", -more, decimal(-more))
            + "}\n";
      }
      case 4 -> {
        bought.add(new Paid("varnish", some, "screws"));
        put(money, "varnish", some, "");
        put(money, own, more, "");
        yield "cost: " + decimal(some + more) + "\n" + item + decimal(some) + ", phase: varnish}\n";
      }
      case 5 -> {
        bought.add(new Paid("varnish", some, "screws"));
        put(money, "varnish", some + more, "");
        yield "cost: {varnish: "
            + decimal(some + more)
            + "}\n"
            + item
            + decimal(some)
            + ", phase: varnish}\n";
      }
      default -> "";
    };
  }

  private String decimal(long minor) {
    return BigDecimal.valueOf(minor, digits).toPlainString();
  }
}
