package ribband.joints;

import java.util.Optional;
import ribband.measure.ShopTalk;

/** Says which temperature something was reckoned at, and where it comes from. */
final class Temper {
  private Temper() {}

  /** {@code at 61 °F}; empty where neither a temperature nor an adhesive is known. */
  static Optional<String> said(Made made, ShopTalk talk) {
    return switch (made.warm().from()) {
      case ENTRY -> made.warm().warmth().map(warmth -> "at " + talk.warmth(warmth));
      case MONTH ->
          made.warm().warmth().map(warmth -> "at " + talk.warmth(warmth) + ", the month's mean");
      case RATED ->
          made.adhesive()
              .map(
                  adhesive ->
                      "as rated"
                          + adhesive.ratedAt().map(t -> " at " + talk.temperature(t)).orElse(""));
    };
  }
}
