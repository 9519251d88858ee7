package ribband.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ribband.feed.ReadFeeds.Read;

/** Whatever stands in the words, both feeds are valid and say the same. */
class FeedBytesTest {
  private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");

  private static Feed feed(String title, String what, List<Item> items) {
    String root = "https://example.org/";
    return new Feed(
        title,
        what,
        root,
        root + "feed.xml",
        root + "feed.json",
        root + "i.svg",
        "tool 1",
        NOON,
        items);
  }

  private static Item item(String title, String html) {
    return new Item(
        "tag:example.org,2026-03-14:/a.html",
        "https://example.org/a.html",
        title,
        NOON,
        html,
        Optional.of("https://example.org/a.jpg"),
        List.of(new Item.Tag(title, title), new Item.Tag("b", "B")));
  }

  private static ReadFeeds read(Feed feed) {
    return ReadFeeds.of(AtomFeed.of(feed), JsonFeed.of(feed));
  }

  @Test
  void charactersThatXmlCannotWriteAreLeftOutOfBoth() {
    String wrench = new String(Character.toChars(0x1F6E0));
    String bad = "a\u0000\u0001\b\u000b\f\u001b\ufffe\uffff" + wrench.charAt(0) + "b" + wrench;
    ReadFeeds feeds = read(feed(bad, bad, List.of(item(bad, "<p>" + bad + "</p>"))));
    Read item = feeds.items().get(0);
    assertEquals("ab" + wrench, item.title());
    assertEquals(List.of("ab" + wrench, "B"), item.tags());
    assertEquals("<p>ab" + wrench + "</p>", item.html());
    assertEquals("ab" + wrench, feeds.wire().getTitle());
    assertEquals("ab" + wrench, feeds.wire().getSubtitle().getValue());
    assertEquals("ab" + wrench, feeds.wire().getAuthors().get(0).getName());
    assertEquals("ab" + wrench, feeds.tree().get("authors").get(0).get("name").asText());
    assertEquals("ab" + wrench, feeds.tree().get("description").asText());
  }

  @Test
  void marksOfXmlAndJsonStayWords() {
    String marks =
        "]]> <![CDATA[ <!-- & &amp; \" ' \\ \\u0041 </content> \u2028\u2029\u0085\u007f\u202e";
    Read item = read(feed(marks, marks, List.of(item(marks, marks)))).items().get(0);
    assertEquals(marks, item.title());
    assertEquals(List.of(marks, "B"), item.tags());
    assertEquals(marks, item.html());
  }

  @Test
  void aPhaseStandsOnOneLineInBoth() {
    ReadFeeds feeds = read(feed("Teal", "", List.of(item("a\tb\nc\r\nd\re", ""))));
    assertEquals("a b c d e", feeds.items().get(0).tags().get(0));
    assertEquals("a b c d e", feeds.wire().getEntries().get(0).getCategories().get(0).getTerm());
  }

  @Test
  void whatIsNotSaidIsNotThere() {
    Item plain =
        new Item(
            "tag:example.org,2026-03-14:/a.html",
            "https://example.org/a.html",
            "A",
            NOON,
            "",
            Optional.empty(),
            List.of());
    ReadFeeds feeds = read(feed("Teal", "", List.of(plain)));
    assertFalse(feeds.tree().has("description"));
    assertFalse(feeds.tree().get("items").get(0).has("image"));
    assertFalse(feeds.tree().get("items").get(0).has("tags"));
    assertEquals(null, feeds.wire().getSubtitle());
    assertEquals("", feeds.items().get(0).html());
  }

  @Test
  void aLongTextIsWhole() {
    String html = "<p>" + "wörd ".repeat(30_000) + "</p>";
    assertEquals(html, read(feed("Teal", "", List.of(item("A", html)))).items().get(0).html());
  }

  @Test
  void bothEndWithALineAndBeginWithoutAMark() {
    Feed feed = feed("Teal", "", List.of());
    String atom = new String(AtomFeed.of(feed), StandardCharsets.UTF_8);
    String json = new String(JsonFeed.of(feed), StandardCharsets.UTF_8);
    assertEquals("<?xml version=\"1.0\" encoding=\"UTF-8\"?>", atom.lines().findFirst().get());
    assertEquals("</feed>\n", atom.substring(atom.lastIndexOf('<')));
    assertEquals("{", json.lines().findFirst().get());
    assertEquals("]\n}\n", json.substring(json.lastIndexOf(']')));
  }

  private static String whole(byte[] feed) {
    return new String(feed, StandardCharsets.UTF_8);
  }

  @Test
  void anAtomFeedIsThisToTheLetter() {
    assertEquals(
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <feed xmlns="http://www.w3.org/2005/Atom">
        <id>https://example.org/</id>
        <title>Teal &amp; Co</title>
        <subtitle>A punt</subtitle>
        <updated>2026-03-14T12:00:00Z</updated>
        <author><name>Teal &amp; Co</name>
        </author>
        <link rel="self" type="application/atom+xml" href="https://example.org/feed.xml"/>
        <link rel="alternate" type="text/html" href="https://example.org/"/>
        <icon>https://example.org/i.svg</icon>
        <generator>tool 1</generator>
        <entry>
        <id>tag:example.org,2026-03-14:/a.html</id>
        <title>Keel</title>
        <published>2026-03-14T12:00:00Z</published>
        <updated>2026-03-14T12:00:00Z</updated>
        <link rel="alternate" type="text/html" href="https://example.org/a.html"/>
        <category term="Keel" label="Keel"/>
        <category term="b" label="B"/>
        <content type="html">&lt;p&gt;Laid.&lt;/p&gt;</content>
        </entry>
        </feed>
        """,
        whole(AtomFeed.of(feed("Teal & Co", "A punt", List.of(item("Keel", "<p>Laid.</p>"))))));
  }

  @Test
  void aJsonFeedIsThisToTheLetter() {
    assertEquals(
        """
        {
        "version" : "https://jsonfeed.org/version/1.1",
        "title" : "Teal",
        "home_page_url" : "https://example.org/",
        "feed_url" : "https://example.org/feed.json",
        "description" : "A punt",
        "icon" : "https://example.org/i.svg",
        "authors" : [
        {
        "name" : "Teal"
        }
        ],
        "items" : [
        {
        "id" : "tag:example.org,2026-03-14:/a.html",
        "url" : "https://example.org/a.html",
        "title" : "Keel",
        "content_html" : "<p>Laid.</p>",
        "image" : "https://example.org/a.jpg",
        "date_published" : "2026-03-14T12:00:00Z",
        "date_modified" : "2026-03-14T12:00:00Z",
        "tags" : [
        "Keel",
        "B"
        ]
        }
        ]
        }
        """,
        whole(JsonFeed.of(feed("Teal", "A punt", List.of(item("Keel", "<p>Laid.</p>"))))));
  }
}
