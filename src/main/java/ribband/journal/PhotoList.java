package ribband.journal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * Reads which pictures an entry shows.
 *
 * <p>spec: with no {@code photos} key all pictures in the entry's own folder are shown by the time
 * they were taken; {@code photos: none} shows none; a folder or a quoted pattern may stand for many
 * and passes over what is no picture.
 */
final class PhotoList {
  private final JournalFolder folder;
  private final String file;
  private final Problems problems;
  private final Map<String, Photo> photos = new LinkedHashMap<>();
  private int batch;
  private Optional<Place> cover = Optional.empty();

  PhotoList(JournalFolder folder, String file, Problems problems) {
    this.folder = folder;
    this.file = file;
    this.problems = problems;
  }

  List<Photo> read(Fields entry) {
    List<Node> items = entry.items("photos");
    if (!entry.has("photos")) {
      many(picturesIn(FileNames.ownFolder(file)), new Place(file, 1, 1));
    } else if (!isNone(items)) {
      items.forEach(this::item);
    }
    return List.copyOf(photos.values());
  }

  private static boolean isNone(List<Node> items) {
    return items.size() == 1
        && items.get(0) instanceof Text text
        && text.value().toLowerCase(Locale.ROOT).equals("none");
  }

  private void item(Node node) {
    if (node instanceof Text text) {
      named(text, Optional.empty(), Optional.empty(), false);
    } else if (node instanceof Mapping mapping) {
      Fields keys = new Fields(mapping, problems);
      Optional<Text> name = keys.located("file");
      Optional<String> caption = keys.text("caption");
      Optional<String> alt = keys.text("alt");
      boolean isCover = keys.value("cover", Readings::trueOrFalse).orElse(false);
      if (isCover) {
        checkOneCover(keys.placeOf("cover"));
      }
      if (!keys.has("file")) {
        problems.error(node.place(), "a photo has no file; write it as - file: scarf.jpg");
      }
      name.ifPresent(text -> named(text, caption, alt, isCover));
      keys.close();
    } else {
      problems.error(node.place(), "photos holds a list in a list; write one file in a line");
    }
  }

  private void checkOneCover(Place place) {
    cover.ifPresent(
        first ->
            problems.error(
                place,
                "a second cover stands here; keep one, the first is in line " + first.line()));
    cover = Optional.of(place);
  }

  private void named(Text name, Optional<String> caption, Optional<String> alt, boolean isCover) {
    try {
      FileNames.refuseStrays(name.value(), "picture");
      Optional<List<String>> several = several(name.value());
      if (several.isEmpty()) {
        String found = FileNames.picture(folder, file, name.value());
        put(new Photo(found, caption, alt, isCover, batch++, name.place()));
      } else if (caption.isPresent() || alt.isPresent() || isCover) {
        throw new Unreadable(
            "stands for several pictures, which share no caption, alt or cover",
            "name that picture alone");
      } else {
        many(several.get(), name.place());
      }
    } catch (Unreadable e) {
      problems.error(name.place(), Values.told("picture", name, e));
    }
  }

  private void put(Photo photo) {
    if (photos.putIfAbsent(photo.file(), photo) != null) {
      problems.warning(
          photo.place(), "picture " + OneLine.quote(photo.file()) + " is shown already; keep one");
    }
  }

  private void many(List<String> files, Place place) {
    for (String found : files) {
      photos.putIfAbsent(
          found, new Photo(found, Optional.empty(), Optional.empty(), false, batch, place));
    }
    batch++;
  }

  private List<String> picturesIn(String path) {
    return folder.in(path).stream().filter(FileNames::isPicture).toList();
  }

  /** The pictures that a pattern or a folder stands for; empty where it is a file's name. */
  private Optional<List<String>> several(String name) throws Unreadable {
    return Wildcard.isPattern(name) ? Optional.of(matching(name)) : inFolder(name);
  }

  private Optional<List<String>> inFolder(String name) throws Unreadable {
    for (String place : FileNames.picturePlaces(file)) {
      Optional<String> path = FileNames.within(place, name);
      if (path.isPresent() && !folder.in(path.get()).isEmpty()) {
        List<String> found = picturesIn(path.get());
        if (found.isEmpty()) {
          throw new Unreadable("holds no picture", "put pictures into it or name another");
        }
        return Optional.of(found);
      }
    }
    return Optional.empty();
  }

  private List<String> matching(String name) throws Unreadable {
    String last = JournalFolder.nameOf(name);
    String inside = name.substring(0, name.length() - last.length());
    Wildcard pattern = new Wildcard(last);
    for (String place : FileNames.picturePlaces(file)) {
      List<String> found =
          FileNames.within(place, inside).map(this::picturesIn).orElse(List.of()).stream()
              .filter(picture -> pattern.matches(JournalFolder.nameOf(picture)))
              .toList();
      if (!found.isEmpty()) {
        return found;
      }
    }
    throw new Unreadable("matches no picture", "look at the names, or name the files one by one");
  }
}
