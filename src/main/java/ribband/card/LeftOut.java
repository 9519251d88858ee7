package ribband.card;

import java.nio.file.Path;
import java.util.Objects;

/**
 * A file that is not brought in, or a folder that is not gone into.
 *
 * @param file where it lies
 * @param name its path from the card's folder, with slashes
 * @param reason why it is left out
 * @param detail what is particular to it. Already there: the journal path of the same content.
 *     Twice: the name of the other one. Older or later: when it was taken, {@code 20:25 on 14 March
 *     2026}. Damaged or unreadable: a sentence without its subject, {@code is cut short; copy it
 *     again from the camera}. Else empty
 */
public record LeftOut(Path file, String name, Reason reason, String detail) implements Seen {
  public LeftOut {
    Objects.requireNonNull(file);
    Objects.requireNonNull(name);
    Objects.requireNonNull(reason);
    Objects.requireNonNull(detail);
  }
}
