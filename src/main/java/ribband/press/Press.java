package ribband.press;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import ribband.memory.Hash;
import ribband.memory.Memory;

/**
 * Writes a site: every file of the new one is put or kept, then {@link #finish} puts it all in
 * place. Threads may share it up to there. A path is relative, its parts joined by slashes, NFC; no
 * part begins with a dot; a second file on one path, or on one that differs only in case, is a
 * programmer's error ({@link IllegalArgumentException}).
 */
public final class Press implements AutoCloseable {
  private final Path site;
  private final Disk disk;
  private final PressLock lock;
  private final Staging staging;
  private final Standing standing;

  /** Folded path to the path claimed. */
  private final Map<String, SitePath> claimed = new ConcurrentHashMap<>();

  private final Map<SitePath, Sheet> sheets = new ConcurrentHashMap<>();
  private boolean finished;

  private Press(Path site, Path workFolder, Disk disk, PressLock lock)
      throws PressRefused, IOException {
    this.site = site;
    this.disk = disk;
    this.lock = lock;
    Memory hashes = Memory.load(workFolder.resolve("site-hashes"), "1 " + site);
    standing = new Standing(site, SiteList.read(site), hashes, lock.taken());
    staging = Staging.fresh(workFolder, disk);
  }

  /**
   * Opens the press for an output and takes its lock.
   *
   * @param output where the site goes; absent, empty or a site of ours
   * @param journalRoot the journal's folder, which is never written over
   * @throws PressRefused where no site may be written there; nothing has been changed or made
   * @throws PressBusy where another run is at work beside this output
   */
  public static Press open(Path output, Path journalRoot)
      throws PressRefused, PressBusy, IOException {
    Path home = Path.of(System.getProperty("user.home"));
    try {
      return open(output, journalRoot, home, new RealDisk());
    } catch (FileSystemException e) {
      throw RealDisk.named("cannot use", output, e);
    }
  }

  static Press open(Path output, Path journalRoot, Path home, Disk disk)
      throws PressRefused, PressBusy, IOException {
    Path site = Ground.check(output, journalRoot, home);
    // Read once before anything is made beside it, and again when nobody else can change it.
    SiteList.read(site);
    Path workFolder = site.resolveSibling(Ground.WORK_FOLDER);
    if (Files.isSymbolicLink(workFolder)) {
      throw new PressRefused("the work folder " + workFolder + " is a link", "remove the link");
    }
    disk.makeFolder(workFolder);
    PressLock lock = PressLock.take(workFolder.toRealPath().resolve("lock"));
    try {
      return new Press(site, workFolder, disk, lock);
    } catch (PressRefused | IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /** The work folder of an output, also where a link leads to that; neither needs to exist. */
  public static Path workFolder(Path output) throws IOException {
    try {
      return Ground.real(output).resolveSibling(Ground.WORK_FOLDER);
    } catch (PressRefused e) {
      // Told when the press is opened; until then there is nothing to remember beside it.
      return output.toAbsolutePath().normalize().resolveSibling(Ground.WORK_FOLDER);
    }
  }

  /** Whether no run is at work beside an output, and none was killed and has left its staging. */
  public static boolean isAtRest(Path output) throws IOException {
    return !Files.exists(Staging.in(workFolder(output)), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * An empty folder on the output's disk, where big files are made before {@link #putFile}. Their
   * permissions become those in the site.
   */
  public Path staging() {
    return staging.made();
  }

  /**
   * Keeps files of the new site that the old one holds just as we wrote them: all, or none where
   * one is missing. They may be older ones: ask only for names that carry what their content is
   * made of.
   */
  public boolean keep(List<String> paths) throws IOException {
    List<Sheet> held = new ArrayList<>();
    for (String path : paths) {
      SitePath named = new SitePath(path);
      Optional<String> hash = standing.held(named);
      if (hash.isEmpty()) {
        return false;
      }
      held.add(new Sheet(named, hash.get(), Optional.empty()));
    }
    for (Sheet sheet : held) {
      claim(sheet.path());
      sheets.put(sheet.path(), sheet);
    }
    return true;
  }

  /**
   * A file of the new site. Bytes that the site already holds are forgotten at once, others wait on
   * the disk.
   */
  public void put(String path, byte[] content) throws IOException {
    SitePath claim = claim(new SitePath(path));
    Optional<String> same = standing.same(claim, content);
    if (same.isPresent()) {
      add(claim, same.get(), Optional.empty());
      return;
    }
    Path staged = staging.next();
    disk.write(staged, content);
    add(claim, Hash.of(content), Optional.of(staged));
  }

  /**
   * A file of the new site that was made in {@link #staging}; it is the press's from here on.
   *
   * @throws IllegalArgumentException where it is no file in there
   */
  public void putFile(String path, Path staged) throws IOException {
    if (!staged.normalize().startsWith(staging.made())
        || !Files.isRegularFile(staged, LinkOption.NOFOLLOW_LINKS)) {
      throw new IllegalArgumentException("not a file in staging: " + staged);
    }
    SitePath claim = claim(new SitePath(path));
    String hash = Standing.read(staged);
    if (standing.holds(claim, hash, Files.size(staged))) {
      disk.delete(staged);
      add(claim, hash, Optional.empty());
      return;
    }
    disk.force(staged);
    add(claim, hash, Optional.of(staged));
  }

  /**
   * The bytes of a file that was put or kept.
   *
   * @throws IllegalArgumentException where none was on that path
   */
  public byte[] read(String path) throws IOException {
    Sheet sheet = sheets.get(new SitePath(path));
    if (sheet == null) {
      throw new IllegalArgumentException("neither put nor kept: " + path);
    }
    return Files.readAllBytes(sheet.staged().orElse(sheet.path().in(site)));
  }

  private SitePath claim(SitePath claim) {
    SitePath other = claimed.putIfAbsent(claim.folded(), claim);
    if (other != null) {
      throw new IllegalArgumentException("two files on one path: " + other + " and " + claim);
    }
    return claim;
  }

  private void add(SitePath path, String hash, Optional<Path> staged) {
    sheets.put(path, new Sheet(path, hash, staged));
  }

  /**
   * Puts all in place, when every file has been put or kept; once.
   *
   * @throws PressRefused where something that is not ours stands where the site needs a file; the
   *     old site is untouched
   * @throws IOException where the disk fails; every file is whole, old or new, and the next run
   *     finishes
   */
  public Published finish() throws PressRefused, IOException {
    if (finished) {
      throw new IllegalStateException("a press finishes once");
    }
    finished = true;
    refuseFilesAsFolders();
    try {
      return new Switchover(site, standing, staging, disk).run(sheets.values());
    } catch (FileSystemException e) {
      throw RealDisk.named("cannot publish into", site, e);
    }
  }

  private void refuseFilesAsFolders() {
    for (Map.Entry<String, SitePath> claim : claimed.entrySet()) {
      String path = claim.getKey();
      for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
        if (claimed.containsKey(path.substring(0, slash))) {
          throw new IllegalArgumentException("a file is also a folder: " + claim.getValue());
        }
      }
    }
  }

  /** Removes what was staged and frees the lock; without {@link #finish} the site is as it was. */
  @Override
  public void close() throws IOException {
    try {
      staging.clear();
    } finally {
      lock.close();
    }
  }
}
