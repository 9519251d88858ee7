package ribband.preview;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import ribband.site.Site;
import ribband.site.Templates;

/** Answers requests: with the site's files, or with the preview's own. */
final class Answers {
  /** No file of a site lies under it, as its name begins with a dot. */
  private static final String OWN = "/.ribband/";

  private static final String NEWS = OWN + "now";
  private static final Set<String> FILES = Set.of("preview.js", "preview.css");

  private final SiteFolder site;
  private final PreviewPages pages;
  private final List<String> hosts;

  /**
   * @param hosts all names by which this machine may be called
   */
  Answers(SiteFolder site, PreviewPages pages, List<String> hosts) {
    this.site = site;
    this.pages = pages;
    this.hosts = List.copyOf(hosts);
  }

  Answer to(Request request, Edition edition) {
    if (!hosts.contains(request.host())) {
      // A foreign name that was made to lead here would let a foreign page read the site.
      return Answer.words(Answer.NOT_FOR_US, "This preview answers to " + hosts.get(0) + " alone.");
    }
    if (!Set.of("GET", "HEAD").contains(request.method())) {
      return Answer.words(Answer.ONLY_READ, "A preview is only read.");
    }
    return request.path().startsWith(OWN) ? own(request, edition) : file(request.path(), edition);
  }

  private Answer own(Request request, Edition edition) {
    if (request.path().equals(NEWS)) {
      boolean known = request.query().equals(edition.site() + "." + edition.mark());
      return known
          ? new Answer(Answer.NOTHING_NEW, ContentType.of(".html"), new byte[0])
          : new Answer(Answer.FOUND, ContentType.of(".html"), pages.box(edition));
    }
    String name = request.path().substring(OWN.length());
    return FILES.contains(name)
        ? new Answer(Answer.FOUND, ContentType.of(name), Templates.asset("preview/" + name))
        : missing(edition);
  }

  private Answer file(String requested, Edition edition) {
    Optional<String> path = SiteFolder.decoded(requested);
    if (path.isPresent() && edition.isPublished()) {
      Optional<byte[]> content = site.read(path.get());
      if (content.isPresent()) {
        return found(path.get(), content.get(), edition);
      }
    }
    // The preview's own pages have the site's look before there is a site.
    if (path.filter(Site.ASSETS::contains).isPresent()) {
      return found(path.get(), Templates.asset(path.get()), edition);
    }
    return edition.isPublished()
        ? missing(edition)
        : new Answer(Answer.NOT_YET, ContentType.of(".html"), pages.waiting(edition));
  }

  private static Answer found(String path, byte[] content, Edition edition) {
    byte[] sent = ContentType.isPage(path) ? PreviewPages.withScript(content, edition) : content;
    return new Answer(Answer.FOUND, ContentType.of(path), sent);
  }

  private Answer missing(Edition edition) {
    return new Answer(Answer.MISSING, ContentType.of(".html"), pages.missing(edition));
  }
}
