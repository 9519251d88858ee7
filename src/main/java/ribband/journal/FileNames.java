package ribband.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;

/** Finds the files that an entry names: pictures, receipts, other entries. */
public final class FileNames {
  /** What is wrong with a name that no file bears. */
  static final String NOT_THERE = "is not there";

  private static final Pattern FROM_THE_NET = Pattern.compile("(?i)[a-z][a-z0-9+.-]+:.*|//.*");
  private static final Pattern DRIVE = Pattern.compile("(?i)[a-z]:[/\\\\].*");
  private static final List<String> PICTURES =
      List.of(
          "jpg", "jpeg", "jpe", "png", "heic", "heif", "avif", "webp", "gif", "tif", "tiff", "bmp",
          "dng", "cr2", "cr3", "nef", "arw", "orf", "rw2", "raf");

  private FileNames() {}

  /** Whether a name looks like a picture's, of any format. */
  static boolean isPicture(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    return PICTURES.contains(name.substring(name.lastIndexOf('.') + 1));
  }

  /**
   * Finds a picture.
   *
   * <p>spec: a name is looked for in the entry's own folder (named like the entry), then beside the
   * entry, then from the journal's root.
   *
   * @return the journal path
   */
  public static String picture(JournalFolder folder, String entry, String name) throws Unreadable {
    return find(folder, name, "picture", picturePlaces(entry));
  }

  /** Where an entry's pictures may lie: its own folder, the one it lies in, the root. */
  static List<String> picturePlaces(String entry) {
    return List.of(ownFolder(entry), JournalFolder.folderOf(entry), "");
  }

  /** The folder named like the entry. */
  static String ownFolder(String entry) {
    return entry.substring(0, entry.lastIndexOf('.'));
  }

  /** Finds any other file: from the journal's root, or beside the entry. */
  static String file(JournalFolder folder, String entry, String name, String kind)
      throws Unreadable {
    return find(folder, name, kind, List.of("", JournalFolder.folderOf(entry)));
  }

  /** The target of a relative link: beside the entry, then from the journal's root. */
  public static Optional<String> linked(JournalFolder folder, String entry, String target) {
    try {
      return Optional.of(find(folder, target, "file", List.of(JournalFolder.folderOf(entry), "")));
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }

  private static String find(JournalFolder folder, String name, String kind, List<String> places)
      throws Unreadable {
    refuseStrays(name, kind);
    List<String> paths = places.stream().flatMap(place -> within(place, name).stream()).toList();
    for (String path : paths) {
      Optional<String> found = folder.find(path);
      if (found.isPresent()) {
        return found.get();
      }
    }
    if (paths.isEmpty()) {
      throw new Unreadable("leads out of the journal", "copy the " + kind + " into the journal");
    }
    if (paths.stream().anyMatch(folder::isKeptOut)) {
      throw new Unreadable(
          "is no plain file of the journal", "copy the " + kind + " itself into the journal");
    }
    throw new Unreadable(NOT_THERE, cure(folder, name, kind, paths));
  }

  private static String cure(JournalFolder folder, String name, String kind, List<String> paths) {
    String file = JournalFolder.nameOf(name);
    String written = name.substring(0, name.length() - file.length());
    return folder
        .nearest(file, paths.stream().map(JournalFolder::folderOf).toList())
        .map(near -> written + near)
        .or(() -> folder.elsewhere(file))
        .map(near -> "did you mean " + OneLine.quote(near) + "?")
        .orElse(
            "put the "
                + kind
                + " into "
                + shown(JournalFolder.folderOf(paths.get(0)))
                + " or name another");
  }

  private static String shown(String folder) {
    return folder.isEmpty() ? "the journal's folder" : OneLine.cut(folder) + "/";
  }

  /** Refuses a name that cannot be one of a file in the journal, wherever it is looked for. */
  static void refuseStrays(String name, String kind) throws Unreadable {
    if (DRIVE.matcher(name).matches() || name.startsWith("/") || name.startsWith("~")) {
      throw new Unreadable(
          "is a path outside the journal",
          "copy the " + kind + " into the journal and write its name");
    }
    if (FROM_THE_NET.matcher(name).matches()) {
      throw new Unreadable(
          "is an address on the net", "save the " + kind + " in the journal and write its name");
    }
    if (name.indexOf('\\') >= 0) {
      throw new Unreadable("has a backslash", "write " + OneLine.cut(name.replace('\\', '/')));
    }
  }

  /** The journal path of a name seen from a folder; empty where it climbs out of the journal. */
  static Optional<String> within(String folder, String name) {
    List<String> parts = new ArrayList<>();
    String path = folder.isEmpty() ? name : folder + "/" + name;
    for (String part : path.split("/", -1)) {
      if (part.equals("..")) {
        if (parts.isEmpty()) {
          return Optional.empty();
        }
        parts.remove(parts.size() - 1);
      } else if (!part.isEmpty() && !part.equals(".")) {
        parts.add(part);
      }
    }
    return Optional.of(String.join("/", parts));
  }
}
