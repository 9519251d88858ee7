package ribband.album;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import ribband.journal.JournalFolder;
import ribband.memory.FileStamp;
import ribband.memory.Memory;
import ribband.photo.PictureFacts;
import ribband.photo.PictureKind;

/** Remembers pictures in the tool's memory: facts by file, proofs by content. */
public final class KeptPictures implements PictureMemory {
  private static final String PROVEN = "proven ";

  private final JournalFolder folder;
  private final Memory memory;
  private final Instant now;

  /**
   * @param now when this run began; a file touched just before is not trusted
   */
  public KeptPictures(JournalFolder folder, Memory memory, Instant now) {
    this.folder = folder;
    this.memory = memory;
    this.now = now;
  }

  @Override
  public Optional<PictureFacts> facts(String file) {
    return memory.get(stamp(file)).flatMap(KeptPictures::read);
  }

  @Override
  public void remember(String file, PictureFacts facts) {
    memory.put(stamp(file), write(facts));
  }

  private FileStamp stamp(String file) {
    return folder.stamp(file, now);
  }

  private static String write(PictureFacts facts) {
    return String.join(
        " ",
        facts.digest(),
        Long.toString(facts.checksum()),
        facts.kind().name(),
        Integer.toString(facts.orientation()),
        Integer.toString(facts.width()),
        Integer.toString(facts.height()),
        Integer.toString(facts.frames()),
        facts.taken().map(LocalDateTime::toString).orElse("-"));
  }

  /** What cannot be read back is simply not remembered. */
  private static Optional<PictureFacts> read(String text) {
    String[] parts = text.split(" ", -1);
    try {
      return Optional.of(
          new PictureFacts(
              parts[0],
              Long.parseLong(parts[1]),
              PictureKind.valueOf(parts[2]),
              Integer.parseInt(parts[3]),
              Integer.parseInt(parts[4]),
              Integer.parseInt(parts[5]),
              Integer.parseInt(parts[6]),
              parts[7].equals("-")
                  ? Optional.empty()
                  : Optional.of(LocalDateTime.parse(parts[7]))));
    } catch (IllegalArgumentException | DateTimeParseException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  @Override
  public boolean isProven(PictureFacts facts) {
    return memory.get(PROVEN + facts.digest()).isPresent();
  }

  @Override
  public void prove(PictureFacts facts) {
    memory.put(PROVEN + facts.digest(), "whole");
  }
}
