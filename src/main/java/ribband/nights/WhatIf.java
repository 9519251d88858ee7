package ribband.nights;

import ribband.shop.Figure;

/** The same pieces with other clamps or another evening. */
public record WhatIf(Nightly now, Nightly changed) {
  /** Nights it saves, below 0 where it costs some; unknown where either is. */
  public Figure<Long> nightsSaved() {
    return now.nightsLeft().flatMap(before -> changed.nightsLeft().map(after -> before - after));
  }
}
