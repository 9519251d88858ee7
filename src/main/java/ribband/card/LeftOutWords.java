package ribband.card;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import ribband.measure.Saying;
import ribband.problem.OneLine;

/**
 * Tells what was left out and why: all in one line, or a line for each.
 *
 * @param leftOut by path
 * @param window in which pictures had to be taken
 */
public record LeftOutWords(List<LeftOut> leftOut, Window window) {
  private static final int MOST_NAMED = 5;

  public LeftOutWords {
    leftOut = List.copyOf(leftOut);
    Objects.requireNonNull(window);
  }

  /**
   * {@code left out 4: 2 HEIC (export them as JPEG), 1 film, 1 already in the journal}; empty where
   * nothing was left out.
   */
  public Optional<String> line() {
    if (leftOut.isEmpty()) {
      return Optional.empty();
    }
    Map<Reason, List<LeftOut>> byReason =
        leftOut.stream()
            .collect(
                Collectors.groupingBy(
                    LeftOut::reason, () -> new EnumMap<>(Reason.class), Collectors.toList()));
    List<String> parts = new ArrayList<>();
    byReason.forEach(
        (reason, files) -> parts.add(Saying.count(files.size()) + " " + words(reason, files)));
    return Optional.of(
        "left out " + Saying.count(leftOut.size()) + ": " + String.join(", ", parts));
  }

  private String words(Reason reason, List<LeftOut> files) {
    boolean one = files.size() == 1;
    String export = one ? " (export it as JPEG)" : " (export them as JPEG)";
    return switch (reason) {
      case HEIC -> "HEIC" + export;
      case RAW -> "camera RAW or TIFF" + export;
      case OTHER_FORMAT -> (one ? "in another format" : "in other formats") + export;
      case FILM -> one ? "film" : "films";
      case OLDER -> "taken before " + told(window.from());
      case LATER -> "taken after " + told(window.until()) + " (is the camera's clock right?)";
      case NO_TIME ->
          "with no time inside ("
              + names(files)
              + ": copy "
              + (one ? "it by hand if it is tonight's)" : "them by hand if they are tonight's)");
      case ALREADY_THERE -> "already in the journal";
      case TWICE_ON_THE_CARD -> one ? "copy of another" : "copies of others";
      case DAMAGED -> "that cannot be shown" + first(files);
      case UNREADABLE -> "that cannot be read" + first(files);
      case NO_PICTURE -> one ? "other file" : "other files";
    };
  }

  /** Each has its own trouble, of which the first one's is told. */
  private static String first(List<LeftOut> files) {
    List<LeftOut> others = files.subList(1, files.size());
    String also = others.isEmpty() ? "" : "; also " + names(others);
    return " (" + told(files.get(0)) + also + ")";
  }

  /** A card that fails may have hundreds. */
  private static String names(List<LeftOut> files) {
    List<LeftOut> named = files.subList(0, Math.min(MOST_NAMED, files.size()));
    int more = files.size() - named.size();
    return named.stream().map(file -> OneLine.of(file.name())).collect(Collectors.joining(", "))
        + (more == 0 ? "" : " and " + Saying.count(more) + " more");
  }

  private static String told(LocalDateTime moment) {
    return Saying.clock(moment.toLocalTime()) + " on " + Saying.day(moment.toLocalDate());
  }

  /** {@code DCIM/IMG_3.JPG is cut short; copy it again from the camera}: a line a file, by path. */
  public List<String> list() {
    return leftOut.stream().map(LeftOutWords::told).toList();
  }

  private static String told(LeftOut file) {
    return OneLine.of(file.name() + " " + sentence(file));
  }

  private static String sentence(LeftOut file) {
    return switch (file.reason()) {
      case HEIC -> "is a HEIC picture; export it as JPEG";
      case RAW -> "is a camera RAW picture or a TIFF; export it as JPEG";
      case OTHER_FORMAT -> "is a picture in another format; export it as JPEG";
      case FILM -> "is a film";
      case OLDER, LATER -> "was taken at " + file.detail();
      case NO_TIME -> "has no time inside; copy it by hand if it is tonight's";
      case ALREADY_THERE -> "is in the journal already, as " + file.detail();
      case TWICE_ON_THE_CARD -> "is a copy of " + file.detail();
      case DAMAGED, UNREADABLE -> file.detail();
      case NO_PICTURE -> "is no picture";
    };
  }
}
