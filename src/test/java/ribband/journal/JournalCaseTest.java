package ribband.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The reader of cases passes over nothing that looks like one. */
class JournalCaseTest {
  @Test
  void blocksAndRowsBecomeCases() {
    List<JournalCase> cases =
        JournalCase.of(
            """
            # A
            ```yaml project.yaml
            name: Dunlin
            ```
            ```markdown 2026-03-14.md
            words
            ```
            ```text problems
            p
            ```
            ## B
            | written | told |
            |---|---|
            | `hours: 2<br>cost: 3` | fine |
            """);
    assertEquals(2, cases.size());
    assertEquals(
        Map.of("project.yaml", "name: Dunlin\n", "2026-03-14.md", "words\n"), cases.get(0).files());
    assertEquals(Optional.of(List.of("p")), cases.get(0).problems());
    assertEquals(
        "---\nhours: 2\ncost: 3\nphase: planking\n---\n",
        cases.get(1).files().get(JournalCase.ENTRY));
    assertEquals(Optional.of(List.of()), cases.get(1).problems());
  }

  @Test
  void whatNoTestWouldReadIsRefused() {
    for (String document :
        List.of(
            "```yaml\nname: x\n```\n",
            "# A\n```markdown 2026-03-14.md\nx\n```\n",
            "| written | told |\n|---|---|\n| hours: 2 | fine |\n")) {
      assertThrows(IllegalStateException.class, () -> JournalCase.of(document), document);
    }
  }
}
