package ribband.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.SheetCsv;

class JobsSheetTest {
  @TempDir Path folder;

  @Test
  void everyJobIsARow() throws Exception {
    Journal journal =
        Journals.read(
            folder,
            """
            2026-03-01
            phase: planking
            todo:
              - {id: glue, what: Glue the breasthook, hours: 1.5}
              - {id: trim, what: "Trim, then sand", after: [glue], phase: fairing}
              - {id: prime, after: [trim, mask]}
              - {id: mask, after: [prep]}
              - {id: prep}
            """,
            """
            2026-03-02
            done: [glue, prep]
            joints: [{name: Breasthook, adhesive: epoxy, clamped at: 20:00, temperature: 72 F}]
            """);
    PunchList list = Journals.list(journal, Instant.parse("2026-03-02T22:00:00Z"));
    Chain chain =
        Chain.longest(list, Map.of(), new Lasting(Optional.empty(), Map.of(), Map.of(), Map.of()));
    StringBuilder csv = new StringBuilder();
    SheetCsv.write(JobsSheet.of(list, chain, ZoneOffset.UTC), csv);
    assertEquals(
        """
        id,state,what,phase,hours,waits_for,held_until,held_by,frees,helps,chain_nights,noted,done
        mask,held,mask,planking,,,2026-03-03T04:00:00+00:00,Breasthook,,prime,2,2026-03-01,
        trim,held,"Trim, then sand",fairing,,,2026-03-03T04:00:00+00:00,Breasthook,,prime,2,2026-03-01,
        prime,waiting,prime,planking,,"trim, mask",,,,,1,2026-03-01,
        glue,done,Glue the breasthook,planking,1.5,,,,,,,2026-03-01,2026-03-02
        prep,done,prep,planking,,,,,,,,2026-03-01,2026-03-02
        """,
        csv.toString());
  }
}
