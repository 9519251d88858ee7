package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plain words of a text. */
class ManuscriptTest {
  private static final String TEXT =
      """
      # The *garboards*

      Both on, **at last**[^n], see
      [the scarf](a.md) and <b>mind</b> the `gap`. [^none]

      ![A scarf](a.jpg)

      - one
      - [x] two

        more

      > Fish &amp; chips \\*

      | a | b |
      |---|---|
      | 1 | 2 |

      ```
      code
        here
      ```

      Second [undefined].

      [^n]: A note.
      """;

  @Test
  void wordsAreOneLineABlock() {
    assertEquals(
        """
        The garboards
        Both on, at last, see the scarf and <b>mind</b> the gap. [^none]
        A scarf
        one
        two
        more
        Fish & chips *
        a b
        1 2
        code here
        Second [undefined].""",
        Read.of(TEXT).manuscript().words());
  }

  @ParameterizedTest
  @CsvSource({
    "1000, 'Both on, at last, see the scarf and <b>mind</b> the gap. [^none] Second [undefined].'",
    "18, 'Both on, at last,…'",
    "17, 'Both on, at…'",
    "9, 'Both on,…'",
    "8, Both…",
    "3, Bo…"
  })
  void openingIsCutAtAWordsEnd(int atMost, String opening) {
    assertEquals(opening, Read.of(TEXT).manuscript().opening(atMost));
  }

  @Test
  void openingNeverCutsACharacter() {
    assertEquals("😀…", Read.of("😀😀😀").manuscript().opening(2));
    assertEquals("😀😀😀", Read.of("😀😀😀").manuscript().opening(3));
  }

  @Test
  void emptyTextHasNothing() {
    for (String text : new String[] {"", "\n", "  \r\n\r\n", "\uFEFF"}) {
      Manuscript manuscript = Read.of(text).manuscript();
      assertEquals("", manuscript.words().replace("\uFEFF", ""));
      assertEquals(0, manuscript.mentions().size());
    }
  }
}
