package ribband.joints;

import java.util.Optional;
import ribband.measure.ShopTalk;
import ribband.shop.Adhesive;

/** Says which temperature something was reckoned at, and where it comes from. */
public final class Temper {
  private Temper() {}

  /** {@code at 61 °F}; empty where neither a temperature nor an adhesive is known. */
  static Optional<String> said(Made made, ShopTalk talk) {
    return said(made.warm(), made.adhesive(), talk);
  }

  /** {@code at 61 °F}; empty where neither a temperature nor an adhesive is known. */
  public static Optional<String> said(Warm warm, Optional<Adhesive> adhesive, ShopTalk talk) {
    return switch (warm.from()) {
      case ENTRY -> warm.warmth().map(warmth -> "at " + talk.warmth(warmth));
      case MONTH -> warm.warmth().map(warmth -> "at " + talk.warmth(warmth) + ", the month's mean");
      case RATED ->
          adhesive.map(
              a -> "as rated" + a.ratedAt().map(t -> " at " + talk.temperature(t)).orElse(""));
    };
  }
}
