package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EditorWordsTest {
  private static List<String> words(String editor) {
    return EditorWords.of(Map.of("EDITOR", editor)).orElse(List.of());
  }

  @Test
  void theFullScreenEditorGoesBeforeTheOther() {
    assertEquals(Optional.of(List.of("a")), EditorWords.of(Map.of("VISUAL", "a", "EDITOR", "b")));
    assertEquals(Optional.of(List.of("b")), EditorWords.of(Map.of("VISUAL", " ", "EDITOR", "b")));
    assertEquals(Optional.of(List.of("b")), EditorWords.of(Map.of("EDITOR", "b")));
    assertEquals(Optional.empty(), EditorWords.of(Map.of("EDITOR", "''")));
    assertEquals(Optional.empty(), EditorWords.of(Map.of()));
  }

  @Test
  void spacesPartWordsAndQuotesKeepThem() {
    assertEquals(List.of("ed", "--wait", "-n"), words("  ed --wait\t-n "));
    assertEquals(List.of("/my tools/ed", "-w"), words("'/my tools/ed' -w"));
    assertEquals(List.of("C:\\My Tools\\ed.exe", "-w"), words("\"C:\\My Tools\\ed.exe\" -w"));
    assertEquals(List.of("ed", "--set=a b", "it's"), words("ed --set=\"a b\" \"it's\""));
    assertEquals(List.of("ed", "$HOME", "\\n", "a;b"), words("ed $HOME \\n a;b"));
    assertEquals(List.of("ed", "a b"), words("ed 'a b"));
    assertEquals(List.of("ed", "a b"), words("ed \"a b"));
  }
}
