package ribband.journal;

import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.PatternSyntaxException;
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
    if (items.isEmpty()) {
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
        problems.error(node.place(), "a photo has no file; write - file: scarf.jpg");
      }
      name.ifPresent(text -> named(text, caption, alt, isCover));
      keys.close();
    } else {
      problems.error(node.place(), "photos holds a list in a list; write one file a line");
    }
  }

  private void checkOneCover(Place place) {
    cover.ifPresent(
        first ->
            problems.error(
                place, "a second cover; the first is at line " + first.line() + ", keep one"));
    cover = Optional.of(place);
  }

  private void named(Text name, Optional<String> caption, Optional<String> alt, boolean isCover) {
    try {
      if (name.value().matches(".*[*?].*")) {
        many(matching(name.value()), name.place());
      } else {
        Optional<List<String>> whole = wholeFolder(name.value());
        if (whole.isPresent()) {
          many(whole.get(), name.place());
        } else {
          String found = FileNames.picture(folder, file, name.value());
          put(new Photo(found, caption, alt, isCover, batch++, name.place()));
        }
      }
    } catch (Unreadable e) {
      problems.error(
          name.place(),
          "picture " + OneLine.quote(name.value()) + " " + e.wrong() + "; " + e.cure());
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

  private Optional<List<String>> wholeFolder(String name) {
    return FileNames.picturePlaces(file).stream()
        .flatMap(place -> FileNames.within(place, name).stream())
        .map(this::picturesIn)
        .filter(found -> !found.isEmpty())
        .findFirst();
  }

  private List<String> matching(String pattern) throws Unreadable {
    for (String place : FileNames.picturePlaces(file)) {
      List<String> found = matching(place, pattern);
      if (!found.isEmpty()) {
        return found;
      }
    }
    throw new Unreadable("matches no picture", "look at the names, or name the files one by one");
  }

  private List<String> matching(String place, String pattern) throws Unreadable {
    int slash = pattern.lastIndexOf('/');
    Optional<String> within = FileNames.within(place, slash < 0 ? "" : pattern.substring(0, slash));
    if (within.isEmpty()) {
      return List.of();
    }
    PathMatcher matcher = matcher(pattern.substring(slash + 1));
    List<String> found = new ArrayList<>();
    for (String candidate : picturesIn(within.get())) {
      if (matcher.matches(Path.of(JournalFolder.nameOf(candidate)))) {
        found.add(candidate);
      }
    }
    return found;
  }

  private static PathMatcher matcher(String pattern) throws Unreadable {
    try {
      return FileSystems.getDefault().getPathMatcher("glob:" + pattern);
    } catch (PatternSyntaxException e) {
      throw new Unreadable("is no pattern", "write it with * alone, as \"scarf-*.jpg\"");
    }
  }
}
