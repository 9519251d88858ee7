package ribband.feed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.rometools.rome.feed.atom.Category;
import com.rometools.rome.feed.atom.Entry;
import com.rometools.rome.feed.atom.Feed;
import com.rometools.rome.io.WireFeedInput;
import com.thaiopensource.util.PropertyMapBuilder;
import com.thaiopensource.validate.ValidateProperty;
import com.thaiopensource.validate.ValidationDriver;
import com.thaiopensource.validate.rng.CompactSchemaReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.xml.sax.InputSource;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Both feeds of a site as libraries of others read them: valid by the RELAX NG schema of RFC 4287
 * and by the rules of JSON Feed 1.1, or an error.
 */
public final class ReadFeeds {
  private static final JsonSchema RULES = rules();

  /** An item as a reader of feeds has it. */
  public record Read(
      String id,
      String url,
      String title,
      Instant published,
      Instant updated,
      String html,
      List<String> tags) {}

  private final byte[] atom;
  private final byte[] json;

  private ReadFeeds(byte[] atom, byte[] json) {
    this.atom = atom;
    this.json = json;
  }

  /** Those of a published site; told whether they say the same. */
  public static ReadFeeds in(Path site) {
    try {
      return of(
          Files.readAllBytes(site.resolve("feed.xml")),
          Files.readAllBytes(site.resolve("feed.json")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The bytes of both; told whether they say the same. */
  public static ReadFeeds of(byte[] atom, byte[] json) {
    ReadFeeds feeds = new ReadFeeds(atom, json);
    feeds.validateAtom();
    feeds.validateJson();
    assertEquals(feeds.atomItems(), feeds.items());
    return feeds;
  }

  private void validateAtom() {
    StringWriter wrong = new StringWriter();
    PropertyMapBuilder properties = new PropertyMapBuilder();
    properties.put(
        ValidateProperty.ERROR_HANDLER,
        new DefaultHandler() {
          @Override
          public void error(org.xml.sax.SAXParseException e) {
            wrong.write(e.getLineNumber() + ": " + e.getMessage() + "\n");
          }
        });
    ValidationDriver driver =
        new ValidationDriver(properties.toPropertyMap(), CompactSchemaReader.getInstance());
    try (InputStream schema = ReadFeeds.class.getResourceAsStream("rfc4287-appendix-b.rnc")) {
      InputSource source = new InputSource(schema);
      source.setEncoding("UTF-8");
      assertTrue(driver.loadSchema(source));
      boolean valid = driver.validate(new InputSource(new java.io.ByteArrayInputStream(atom)));
      assertEquals("", wrong.toString());
      assertTrue(valid);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private void validateJson() {
    assertEquals(Set.of(), RULES.validate(tree()));
  }

  private static JsonSchema rules() {
    try (InputStream schema = ReadFeeds.class.getResourceAsStream("json-feed-1.1.schema.json")) {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The JSON feed. */
  public JsonNode tree() {
    try {
      return new ObjectMapper().readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The Atom feed. */
  public Feed wire() {
    try {
      String text = new String(atom, StandardCharsets.UTF_8);
      return (Feed) new WireFeedInput().build(new StringReader(text));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** The items of both, the newest first. */
  public List<Read> items() {
    List<Read> items = new ArrayList<>();
    for (JsonNode item : tree().get("items")) {
      items.add(
          new Read(
              item.get("id").asText(),
              item.get("url").asText(),
              item.get("title").asText(),
              Instant.parse(item.get("date_published").asText()),
              Instant.parse(item.get("date_modified").asText()),
              item.get("content_html").asText(),
              tags(item)));
    }
    return items;
  }

  private static List<String> tags(JsonNode item) {
    List<String> tags = new ArrayList<>();
    item.path("tags").forEach(tag -> tags.add(tag.asText()));
    return tags;
  }

  private List<Read> atomItems() {
    List<Read> items = new ArrayList<>();
    for (Entry entry : wire().getEntries()) {
      assertEquals("html", entry.getContents().get(0).getType());
      items.add(
          new Read(
              entry.getId(),
              entry.getAlternateLinks().get(0).getHref(),
              entry.getTitle(),
              entry.getPublished().toInstant(),
              entry.getUpdated().toInstant(),
              entry.getContents().get(0).getValue(),
              entry.getCategories().stream().map(Category::getLabel).toList()));
    }
    return items;
  }

  /** The one item of a title. */
  public Read titled(String title) {
    List<Read> found = items().stream().filter(item -> item.title().equals(title)).toList();
    assertEquals(1, found.size(), () -> title + " in " + titles());
    return found.get(0);
  }

  public List<String> titles() {
    return items().stream().map(Read::title).toList();
  }
}
