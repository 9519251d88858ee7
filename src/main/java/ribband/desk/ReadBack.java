package ribband.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.ledger.Ledger;

/**
 * What the journal says of brought entries when it is read again.
 *
 * @param unlike those that say something else than was written, or are not there; in their order
 * @param addsUp whether its totals are those that were told
 * @param isUntouched whether nothing but these entries has come, gone or changed meanwhile
 */
public record ReadBack(List<BroughtEntry> unlike, boolean addsUp, boolean isUntouched) {
  public ReadBack {
    unlike = List.copyOf(unlike);
  }

  /**
   * Compares the two.
   *
   * @param before the journal that the entries were brought into
   * @param after the same, read again
   * @throws IOException where a file cannot be read
   */
  public static ReadBack of(Bringing bringing, Journal before, Journal after) throws IOException {
    Map<String, Entry> byFile =
        after.entries().stream().collect(Collectors.toMap(Entry::file, Function.identity()));
    List<BroughtEntry> unlike =
        bringing.entries().stream()
            .filter(entry -> !entry.isSaidBy(byFile.get(entry.file().path())))
            .toList();
    boolean addsUp = Ledger.of(after).whole().equals(bringing.after());
    return new ReadBack(unlike, addsUp, isUntouched(bringing, before, after));
  }

  private static boolean isUntouched(Bringing bringing, Journal before, Journal after)
      throws IOException {
    Set<String> brought =
        bringing.entries().stream().map(entry -> entry.file().path()).collect(Collectors.toSet());
    Set<String> files = new HashSet<>(before.folder().all());
    files.addAll(brought);
    List<Entry> others =
        after.entries().stream().filter(entry -> !brought.contains(entry.file())).toList();
    return files.equals(Set.copyOf(after.folder().all()))
        && before.project().equals(after.project())
        && before.entries().equals(others)
        && stand(bringing, after.folder().root());
  }

  /** Whether the files are still those that were written. */
  private static boolean stand(Bringing bringing, Path root) throws IOException {
    for (BroughtEntry entry : bringing.entries()) {
      byte[] there = Files.readAllBytes(entry.file().file(root));
      if (!entry.text().equals(new String(there, StandardCharsets.UTF_8))) {
        return false;
      }
    }
    return true;
  }
}
