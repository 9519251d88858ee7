package ribband.press;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import ribband.journal.JournalFolder;

/** Puts a new site in the place of the old one, by the steps that the package tells; used once. */
final class Switchover {
  private static final int CLASHES_SHOWN = 5;

  private final Path site;
  private final Standing standing;
  private final Staging staging;
  private final Disk disk;
  private final NavigableSet<Path> touchedFolders = new TreeSet<>();

  Switchover(Path site, Standing standing, Staging staging, Disk disk) {
    this.site = site;
    this.standing = standing;
    this.staging = staging;
    this.disk = disk;
  }

  /**
   * @param sheets all of the new site
   * @throws PressRefused where something that is not ours stands where the site needs a file;
   *     nothing has been moved then
   */
  Published run(Collection<Sheet> sheets) throws PressRefused, IOException {
    List<Sheet> changed =
        sheets.stream().filter(sheet -> sheet.staged().isPresent()).sorted(order()).toList();
    Map<SitePath, String> hashes = new HashMap<>();
    sheets.forEach(sheet -> hashes.put(sheet.path(), sheet.hash()));
    SiteList next = SiteList.of(hashes);
    SortedSet<SitePath> gone = new TreeSet<>(standing.list().paths());
    gone.removeAll(next.paths());

    refuseClashes(changed);
    if (next.equals(standing.list()) && changed.isEmpty()) {
      standing.save();
      return new Published(0, sheets.size(), 0, List.of());
    }
    disk.makeFolder(site);
    disk.force(site.getParent());
    putList(standing.list().and(next));
    putInPlace(changed);
    if (!gone.isEmpty()) {
      // A power cut keeps no order of its own: what replaces a file is down before that goes.
      forceFolders();
    }
    List<String> left = new ArrayList<>();
    int removed = remove(gone, next, left);
    removeEmptyFolders(gone);
    forceFolders();
    Instant now = putList(next);
    remember(changed, now);
    return new Published(changed.size(), sheets.size() - changed.size(), removed, left);
  }

  /**
   * Pages link to each other in circles, so those at new addresses come first: until all of them
   * are there, nobody who begins at the first page is led to any.
   */
  private Comparator<Sheet> order() {
    return Comparator.comparing((Sheet sheet) -> sheet.path().wave() != SitePath.Wave.ASSETS)
        .thenComparing(this::replaces)
        .thenComparing(sheet -> sheet.path().wave())
        .thenComparing(Sheet::path);
  }

  private boolean replaces(Sheet sheet) {
    return standing.list().names(sheet.path())
        && Files.exists(site.resolve(sheet.path().text()), LinkOption.NOFOLLOW_LINKS);
  }

  private void refuseClashes(List<Sheet> changed) throws PressRefused, IOException {
    SortedSet<String> clashes = new TreeSet<>();
    for (Sheet sheet : changed) {
      clash(sheet.path()).ifPresent(path -> clashes.add(site.relativize(path).toString()));
    }
    if (clashes.isEmpty()) {
      return;
    }
    String shown = String.join(", ", clashes.stream().limit(CLASHES_SHOWN).toList());
    int more = clashes.size() - CLASHES_SHOWN;
    throw new PressRefused(
        "in the output "
            + site
            + " stands what the tool did not write, where the site needs"
            + " files: "
            + shown
            + (more > 0 ? " and " + more + " more" : ""),
        "move it away, then publish again");
  }

  /** What is not ours and stands where a file, or a folder above it, has to be. */
  private Optional<Path> clash(SitePath path) throws IOException {
    Path file = path.in(site);
    for (Path above = file.getParent(); !above.equals(site); above = above.getParent()) {
      if (Files.exists(above, LinkOption.NOFOLLOW_LINKS)
          && !Files.isDirectory(above, LinkOption.NOFOLLOW_LINKS)) {
        return Optional.of(above);
      }
    }
    boolean free = !Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    boolean ours = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && isListed(path, file);
    return free || ours ? Optional.empty() : Optional.of(file);
  }

  private boolean isListed(SitePath path, Path file) throws IOException {
    return standing.list().names(path) || isSame(standing.list().alike(path), file);
  }

  /** Whether a path that differs only in case is the same file here. */
  private boolean isSame(Optional<SitePath> alike, Path file) throws IOException {
    if (alike.isEmpty()) {
      return false;
    }
    Path other = alike.get().in(site);
    return Files.exists(other, LinkOption.NOFOLLOW_LINKS) && Files.isSameFile(other, file);
  }

  /** Puts a list in place and brings it down to the disk; gives the time of the file system. */
  private Instant putList(SiteList list) throws IOException {
    Path staged = staging.next();
    disk.write(staged, list.bytes());
    Instant now = Files.getLastModifiedTime(staged).toInstant();
    disk.move(staged, site.resolve(JournalFolder.SITE_FILES));
    disk.force(site);
    return now;
  }

  private void putInPlace(List<Sheet> changed) throws IOException {
    for (Sheet sheet : changed) {
      Path file = sheet.path().in(site);
      if (!touchedFolders.contains(file.getParent())) {
        disk.makeFolder(file.getParent());
        touch(file.getParent());
      }
      disk.move(sheet.staged().orElseThrow(), file);
    }
  }

  private void touch(Path folder) {
    for (Path up = folder; !up.equals(site); up = up.getParent()) {
      touchedFolders.add(up);
    }
  }

  private int remove(SortedSet<SitePath> gone, SiteList next, List<String> left)
      throws IOException {
    int removed = 0;
    // A page goes before what it shows.
    Comparator<SitePath> order = Comparator.comparing(p -> p.wave() == SitePath.Wave.ASSETS);
    for (SitePath path : gone.stream().sorted(order).toList()) {
      Path file = path.in(site);
      if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS) || isSame(next.alike(path), file)) {
        continue;
      }
      Optional<String> hash = standing.readHash(path);
      if (hash.isPresent() && standing.list().names(path, hash.get())) {
        disk.delete(file);
        touch(file.getParent());
        removed++;
      } else {
        left.add(path.text());
      }
    }
    return removed;
  }

  private void removeEmptyFolders(SortedSet<SitePath> gone) throws IOException {
    NavigableSet<Path> folders = new TreeSet<>();
    for (SitePath path : gone) {
      for (Path up = path.in(site).getParent(); !up.equals(site); up = up.getParent()) {
        folders.add(up);
      }
    }
    for (Path folder : folders.descendingSet()) {
      if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) && isEmpty(folder)) {
        disk.delete(folder);
        touchedFolders.remove(folder);
        touch(folder.getParent());
      }
    }
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> children = Files.list(folder)) {
      return children.findAny().isEmpty();
    }
  }

  private void forceFolders() throws IOException {
    for (Path folder : touchedFolders) {
      disk.force(folder);
    }
    disk.force(site);
    touchedFolders.clear();
  }

  private void remember(List<Sheet> changed, Instant now) throws IOException {
    for (Sheet sheet : changed) {
      standing.remember(sheet.path(), sheet.hash(), now);
    }
    standing.save();
  }
}
