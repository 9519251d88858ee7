package ribband.postcard;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.album.Shot;
import ribband.measure.Saying;
import ribband.memory.Hash;
import ribband.photo.Darkroom;
import ribband.photo.PrintSize;
import ribband.photo.UnfitPicture;
import ribband.recap.BestPicture;
import ribband.recap.Recap;

/**
 * The card of one month or year, not drawn yet.
 *
 * @param face what it says
 * @param shot the picture that stands for the month or year; empty where it has none
 */
public record Card(Face face, Optional<Shot> shot) {
  private static final int CONTENT_DIGITS = 16;
  private static final char NO_BREAK = '\u00a0';

  public Card {
    Objects.requireNonNull(face);
    Objects.requireNonNull(shot);
  }

  /** Gets hold of a print. */
  @FunctionalInterface
  public interface Prints {
    /** Its bytes, as a darkroom made them. */
    byte[] read(Shot shot, PrintSize size) throws UnfitPicture, IOException;
  }

  /**
   * The card of a month or year.
   *
   * @param what the boat is
   * @param picture that stands for it
   */
  public static Card of(Recap recap, Optional<String> what, Optional<BestPicture> picture) {
    Face face =
        new Face(
            recap.boat(),
            what.orElse(""),
            recap.title(),
            recap.hours(),
            recap.unit(),
            (recap.isWorked() ? recap.place() : "no work on the boat") + toDate(recap),
            recap.isWorked() ? unbroken(recap.nights()) : "",
            recap.phases().stream()
                .map(phase -> new Share(phase.title(), phase.hours(), phase.seconds()))
                .toList(),
            money(recap.costs()),
            pieces(recap));
    return new Card(face, picture.map(BestPicture::shot));
  }

  private static String toDate(Recap recap) {
    return ", " + unbroken(recap.hoursToDate() + " " + recap.unitToDate()) + " to date";
  }

  private static String money(Recap.Costs costs) {
    return Stream.of(costs.moved(), costs.toDate().isEmpty() ? "" : costs.toDate() + " to date")
        .filter(said -> !said.isEmpty())
        .map(Card::unbroken)
        .collect(Collectors.joining(", "));
  }

  /** There is room for one kind: that of which most were made. */
  private static String pieces(Recap recap) {
    return recap.pieces().stream()
        .filter(some -> some.count() > 0)
        // Of equals, min takes the first.
        .min(Comparator.comparingLong(Recap.PiecesMade::count).reversed())
        .map(some -> unbroken(done(some) + " ") + some.kind())
        .orElse("");
  }

  private static String done(Recap.PiecesMade some) {
    return Saying.count(some.done()) + " of " + Saying.count(some.total());
  }

  /** A figure and its unit stand in one line. */
  private static String unbroken(String words) {
    return words.replace(' ', NO_BREAK);
  }

  /** A name by all that is shown, 16 hex digits: what has the same name looks the same. */
  public String content(Shape shape) {
    String shown =
        String.join(
            "\n",
            Postcard.RECIPE,
            shape.name(),
            face.toString(),
            shot.map(one -> Darkroom.stem(one.facts())).orElse(""));
    return Hash.of(shown.getBytes(StandardCharsets.UTF_8)).substring(0, CONTENT_DIGITS);
  }

  /**
   * Draws it as PNG.
   *
   * @throws UnfitPicture where its picture has become unfit
   * @throws IOException where its print cannot be had
   */
  public byte[] draw(Shape shape, Prints prints) throws UnfitPicture, IOException {
    if (shot.isEmpty()) {
      return Postcard.png(face, Optional.empty(), shape);
    }
    byte[] print = prints.read(shot.get(), print(shot.get(), shape));
    return Postcard.png(face, Optional.of(Darkroom.pixels(print)), shape);
  }

  /** The smallest that is as wide as the card has room for, else the widest. */
  private static PrintSize print(Shot shot, Shape shape) {
    return PrintSize.of(shot.facts()).stream()
        .filter(size -> size.width() * 2 >= shape.width())
        .findFirst()
        .orElse(PrintSize.largest(shot.facts()));
  }
}
