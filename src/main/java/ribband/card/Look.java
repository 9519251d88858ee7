package ribband.card;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import ribband.measure.Saying;
import ribband.photo.OtherKind;
import ribband.photo.PictureFacts;
import ribband.photo.PictureHead;
import ribband.photo.PictureReader;
import ribband.photo.UnfitPicture;

/**
 * Looks at one file after the other; keeps nothing between them and may be shared. Only a picture
 * taken in the window is read as a whole.
 *
 * @param zone in which the files' own times are told
 */
record Look(Window window, ZoneId zone) {
  Seen at(CardFile file) {
    try {
      PictureHead head = PictureHead.read(file.path());
      if (head.other().isPresent()) {
        return olderOr(other(file, head.other().get()));
      }
      if (head.taken().isEmpty()) {
        return olderOr(file.leftOut(Reason.NO_TIME));
      }
      LocalDateTime taken = head.taken().get();
      Optional<Reason> outside = window.outside(taken);
      return outside.isPresent()
          ? file.leftOut(outside.get(), told(taken))
          : shot(file, taken, Files.size(file.path()));
    } catch (UnfitPicture e) {
      return unfit(file, e.getMessage());
    } catch (IOException e) {
      return file.leftOut(Reason.UNREADABLE, CardFolder.sentence(e));
    }
  }

  private static Shot shot(CardFile file, LocalDateTime taken, long size)
      throws UnfitPicture, IOException {
    PictureFacts facts = new PictureReader().facts(file.path());
    return new Shot(file, facts.kind(), taken, facts.digest(), size);
  }

  /**
   * What tells no time itself, of years of films and all kinds of pictures on a phone, goes by the
   * file's: nobody wants to hear each night of those that were there before.
   */
  private LeftOut olderOr(LeftOut file) throws IOException {
    LocalDateTime written =
        LocalDateTime.ofInstant(Files.getLastModifiedTime(file.file()).toInstant(), zone);
    return file.reason() != Reason.NO_PICTURE && written.isBefore(window.from())
        ? new LeftOut(file.file(), file.name(), Reason.OLDER, told(written))
        : file;
  }

  private static LeftOut other(CardFile file, OtherKind kind) {
    return switch (kind) {
      case HEIC -> file.leftOut(Reason.HEIC);
      case RAW, TIFF -> file.leftOut(Reason.RAW);
      case AVIF, BMP, PSD, ICO, EPS -> file.leftOut(Reason.OTHER_FORMAT);
      case VIDEO -> file.leftOut(Reason.FILM);
      case UNKNOWN ->
          file.isNamedAsHeic() ? file.leftOut(Reason.HEIC) : unfit(file, kind.sentence());
      case PDF, TEXT -> unfit(file, kind.sentence());
    };
  }

  /** Of a file that holds no picture its name alone tells whether one is lost. */
  private static LeftOut unfit(CardFile file, String sentence) {
    if (file.isNamedAsPicture()) {
      return file.leftOut(Reason.DAMAGED, sentence);
    }
    return file.leftOut(file.isNamedAsFilm() ? Reason.FILM : Reason.NO_PICTURE);
  }

  private static String told(LocalDateTime taken) {
    return Saying.clock(taken.toLocalTime()) + " on " + Saying.day(taken.toLocalDate());
  }
}
