package ribband.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URI;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import ribband.site.WholeAddresses;

/** Against RFC 4151, 2.1. */
class TagUrisTest {
  private static String of(String address, String path) {
    return new TagUris(new WholeAddresses(URI.create(address))).of(LocalDate.of(2026, 3, 14), path);
  }

  @Test
  void hostDayAndPathMakeAName() {
    assertEquals(
        "tag:example.org,2026-03-14:/boat/entries/a%20b.html",
        of("https://example.org/boat/", "entries/a b.html"));
    assertEquals("tag:example.org,2026-03-14:/x.html", of("http://EXAMPLE.org:8080/", "x.html"));
  }

  @Test
  void twoBoatsOnOneHostDiffer() {
    assertEquals("tag:example.org,2026-03-14:/a/x.html", of("https://example.org/a/", "x.html"));
    assertEquals("tag:example.org,2026-03-14:/b/x.html", of("https://example.org/b/", "x.html"));
  }

  @Test
  void aHostInFiguresIsSpelledWithWhatANameMayHold() {
    assertEquals("tag:192.0.2.7,2026-03-14:/x.html", of("http://192.0.2.7/", "x.html"));
    assertEquals("tag:2001-db8--1,2026-03-14:/x.html", of("http://[2001:db8::1]/", "x.html"));
  }
}
