package ribband.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.shop.Adhesive;

/** What a maker's data sheet, as the builder copied it, does not say of an adhesive. */
record SheetGaps(Adhesive adhesive) {
  /** Whether it comes ready to lay on: nothing says how to mix or clamp it, only when to recoat. */
  boolean isCoating() {
    return adhesive.mix().isEmpty()
        && adhesive.potLife().isEmpty()
        && !isForJoints()
        && adhesive.recoat().isPresent();
  }

  /** Whether any time of a glued joint is known. */
  boolean isForJoints() {
    return adhesive.openTime().isPresent()
        || adhesive.softFor().isPresent()
        || adhesive.clampTime().isPresent();
  }

  /** The keys to give, to be told more; a coating needs none of them. */
  List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (!isCoating()) {
      unlessGiven(missing, "mix", adhesive.mix());
      unlessGiven(missing, "pot life", adhesive.potLife());
      unlessGiven(missing, "open time", adhesive.openTime());
      unlessGiven(missing, "soft for", adhesive.softFor());
      unlessGiven(missing, "clamp time", adhesive.clampTime());
    }
    return missing;
  }

  private static void unlessGiven(List<String> missing, String key, Optional<?> given) {
    if (given.isEmpty()) {
      missing.add(key);
    }
  }
}
