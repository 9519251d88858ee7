package ribband.feed;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Writes a feed as JSON Feed 1.1 (jsonfeed.org/version/1.1); for one feed. */
final class JsonFeed {
  private static final String VERSION = "https://jsonfeed.org/version/1.1";

  private final JsonGenerator json;

  private JsonFeed(JsonGenerator json) {
    this.json = json;
  }

  /** The feed in UTF-8. */
  static byte[] of(Feed feed) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      DefaultIndenter lines = new DefaultIndenter("", "\n");
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines));
      new JsonFeed(json).feed(feed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return (text + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private void feed(Feed feed) throws IOException {
    json.writeStartObject();
    json.writeStringField("version", VERSION);
    json.writeStringField("title", feed.title());
    json.writeStringField("home_page_url", feed.home());
    json.writeStringField("feed_url", feed.json());
    if (!feed.what().isEmpty()) {
      json.writeStringField("description", feed.what());
    }
    json.writeStringField("icon", feed.icon());
    json.writeArrayFieldStart("authors");
    json.writeStartObject();
    json.writeStringField("name", feed.title());
    json.writeEndObject();
    json.writeEndArray();
    json.writeArrayFieldStart("items");
    for (Item item : feed.items()) {
      item(item);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void item(Item item) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", item.id());
    json.writeStringField("url", item.address());
    json.writeStringField("title", item.title());
    json.writeStringField("content_html", item.html());
    if (item.image().isPresent()) {
      json.writeStringField("image", item.image().get());
    }
    json.writeStringField("date_published", item.dated().toString());
    json.writeStringField("date_modified", item.dated().toString());
    if (!item.phases().isEmpty()) {
      json.writeArrayFieldStart("tags");
      for (Item.Tag phase : item.phases()) {
        json.writeString(phase.label());
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }
}
