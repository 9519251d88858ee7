package ribband.nights;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ribband.joints.Bonds;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.measure.Hours;
import ribband.measure.ShopTalk;
import ribband.measure.Units;
import ribband.pieces.PieceCount;
import ribband.pieces.Texts;
import ribband.stock.Stock;

/** A journal looked at from one moment. */
record Shop(Journal journal, Map<String, PieceCount> counts, Nights nights) {
  static final NightWords WORDS =
      new NightWords(new ShopTalk(Units.US), ZoneId.of("America/Chicago"));

  static Shop at(Path folder, String now, String project, String... entries) throws IOException {
    return at(
        LocalDateTime.parse(now),
        Texts.journal(folder, "time zone: America/Chicago\n" + project, entries));
  }

  static Shop at(LocalDateTime now, Journal journal) {
    LocalDate day = now.toLocalDate();
    Map<String, PieceCount> counts = PieceCount.of(journal, day);
    return new Shop(
        journal,
        counts,
        Nights.of(
            counts,
            Stock.of(journal, day, Stock.Told.TO_THE_BUILDER),
            Bonds.of(journal, now.atZone(journal.project().zone()).toInstant()),
            Stock.Told.TO_THE_BUILDER));
  }

  Setting usual() {
    return Setting.usual(Ledger.of(journal).nights(), journal.project(), nights.night());
  }

  /** The evening to the minute, none where below zero. */
  static Setting with(int clamps, int minutes) {
    return new Setting(
        minutes < 0
            ? new EveningLength(Optional.empty(), EveningLength.From.UNKNOWN)
            : EveningLength.given(Hours.ofMinutes(minutes)),
        clamps < 0 ? OptionalInt.empty() : OptionalInt.of(clamps));
  }

  WhatIf whatIf(Setting now, Setting changed) {
    return new WhatIf(strakes(now), strakes(changed));
  }

  Nightly strakes(Setting setting) {
    return nights.of(counts.get("strakes"), setting);
  }
}
