package ribband.preview;

import java.nio.file.Path;
import java.util.Optional;

/** Lets tests of other packages ask for files as the preview does. */
public final class ServedFolder {
  private final SiteFolder site;

  public ServedFolder(Path site) {
    this.site = new SiteFolder(site);
  }

  public static Optional<String> decoded(String path) {
    return SiteFolder.decoded(path);
  }

  public Optional<byte[]> read(String path) {
    return site.read(path);
  }
}
