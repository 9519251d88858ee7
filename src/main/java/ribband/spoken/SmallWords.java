package ribband.spoken;

import java.util.List;
import java.util.stream.Stream;

/** Words that are known whatever the project: those that are passed over, and those that tell. */
final class SmallWords {
  static final List<String> ARTICLES = List.of("a", "an", "the");
  static final List<String> HOUR = List.of("h", "hr", "hrs", "hour", "hours");
  static final List<String> MINUTE = List.of("m", "min", "mins", "minute", "minutes");
  static final List<String> QUARTER = List.of("quarter", "quarters");
  static final List<String> NUMBER = List.of("number", "numbers", "no", "no.", "nos", "nos.", "#");

  /** Around hours. */
  static final List<String> AT_WORK =
      List.of(
          "a", "an", "the", "i", "we", "for", "on", "of", "in", "at", "worked", "work", "spent",
          "did", "got", "put", "was", "were", "hours", "time");

  /** Around money, in front of what it went for and behind it. */
  static final List<String> AT_THE_SHOP =
      List.of(
          "a", "an", "the", "i", "we", "for", "on", "of", "in", "at", "to", "spent", "paid",
          "bought", "buying", "cost", "costs", "got", "was", "were", "it", "some");

  /** With these a whole number is money too. */
  static final List<String> PAID = List.of("paid", "cost", "costs");

  static final List<String> CAME_BACK =
      List.of("refund", "refunded", "back", "minus", "returned", "credit");

  /** Words that turn what money went for round, or put it off. */
  static final List<String> DOUBTFUL =
      List.of(
          "sold",
          "owe",
          "owed",
          "owes",
          "lent",
          "borrowed",
          "need",
          "needs",
          "want",
          "wants",
          "saved",
          "quoted",
          "quote",
          "estimate",
          "estimated",
          "not",
          "no",
          "never",
          "without",
          "maybe",
          "perhaps",
          "should",
          "will",
          "would",
          "could",
          "might",
          "tomorrow",
          "yesterday",
          "each",
          "apiece",
          "per",
          "percent",
          "off",
          "about",
          "around",
          "almost",
          "nearly",
          "didn't",
          "don't",
          "haven't",
          "won't",
          "less",
          "more",
          "than",
          "under",
          "over",
          "until",
          "instead",
          "or",
          "x",
          "×",
          "@");

  /** Beside these a figure with no sign is no price. */
  static final List<String> MEASURES =
      List.of(
          "temperature",
          "humidity",
          "moisture",
          "degrees",
          "f",
          "c",
          "thick",
          "wide",
          "long",
          "deep",
          "high",
          "mm",
          "cm",
          "metre",
          "metres",
          "meter",
          "meters",
          "ft",
          "feet",
          "foot",
          "inch",
          "inches",
          "kg",
          "g",
          "lb",
          "lbs",
          "oz",
          "day",
          "days",
          "week",
          "weeks");

  /** Around pieces. */
  static final List<String> AT_THE_BOAT =
      List.of(
          "the", "of", "to", "side", "more", "i", "we", "did", "got", "put", "have", "are", "is");

  /** What is said of a piece that counts. */
  static final List<String> FINISHED =
      List.of(
          "on",
          "hung",
          "fitted",
          "fastened",
          "glued",
          "done",
          "finished",
          "made",
          "up",
          "in",
          "place",
          "complete",
          "completed");

  static final List<String> SCRAPPED = List.of("scrapped", "scrap", "minus", "removed");
  static final List<String> COUNTING = List.of("a", "an", "another", "both", "pair");
  static final List<String> EACH = List.of("each", "every", "either", "per");

  private SmallWords() {}

  /** Whether a word means something of its own, so that no name may have it. */
  static boolean isTaken(String word) {
    return NumberWords.read(word).isPresent()
        || Stream.of(
                ARTICLES,
                HOUR,
                MINUTE,
                QUARTER,
                NUMBER,
                AT_WORK,
                AT_THE_SHOP,
                CAME_BACK,
                AT_THE_BOAT,
                FINISHED,
                SCRAPPED,
                COUNTING,
                EACH,
                List.of("half", "and", "then", "plus"))
            .anyMatch(words -> words.contains(word));
  }
}
