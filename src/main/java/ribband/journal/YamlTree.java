package ribband.journal;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import ribband.journal.Node.Field;
import ribband.journal.Node.Listing;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Name;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * Turns YAML into a tree of located texts, leaving every value as it was written: what a text means
 * is for the key to say. Refuses what can surprise: aliases, anchors, tags, merge keys, twice the
 * same key. One use per text.
 */
final class YamlTree {
  private static final int DEEPEST = 20;
  private static final int MOST_BYTES = 64 << 10;
  private static final YAMLFactory FACTORY = new YAMLFactory();

  private final String file;
  private final int linesBefore;
  private final Problems problems;
  private final String[] lines;

  /** The letters of the line read last, kept because one line may hold thousands of values. */
  private int[] points = {};

  private int pointsLine;

  private YamlTree(String text, String file, int linesBefore, Problems problems) {
    this.file = file;
    this.linesBefore = linesBefore;
    this.problems = problems;
    this.lines = text.split("\n", -1);
  }

  /** Stops the reading of one text after its problem has been told. */
  private static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    Refused() {
      super(null, null, false, false);
    }
  }

  /**
   * Reads one document that must be a mapping.
   *
   * @param linesBefore how many lines of the file stand above the text
   * @return empty where a problem was told; an empty mapping for an empty text
   */
  static Optional<Mapping> read(String text, String file, int linesBefore, Problems problems) {
    return new YamlTree(text, file, linesBefore, problems).read(text);
  }

  private Optional<Mapping> read(String text) {
    if (text.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      problems.error(place(1, 1), "the keys are larger than 64 KiB; write fewer");
      return Optional.empty();
    }
    try (YAMLParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() == null) {
        return Optional.of(new Mapping(List.of(), new Place(file, linesBefore + 1, 1)));
      }
      Node top = node(parser, 0);
      if (parser.nextToken() != null) {
        throw refuse(here(parser), "a second document begins here; keep one");
      }
      if (top instanceof Mapping mapping) {
        return Optional.of(mapping);
      }
      if (top.isBlank()) {
        return Optional.of(new Mapping(List.of(), top.place()));
      }
      throw refuse(
          top.place(),
          "this is no list of keys; write a key, a colon, a space and a value in each line");
    } catch (Refused e) {
      return Optional.empty();
    } catch (IOException e) {
      tellSyntax(e);
      return Optional.empty();
    }
  }

  private Node node(YAMLParser parser, int depth) throws IOException, Refused {
    Place place = here(parser);
    refuseMarks(parser, place);
    if (depth > DEEPEST) {
      throw refuse(place, "this nests more than 20 deep; write it flatter");
    }
    return switch (parser.currentToken()) {
      case START_OBJECT -> mapping(parser, place, depth);
      case START_ARRAY -> listing(parser, place, depth);
      default -> scalar(parser, place);
    };
  }

  private Text scalar(YAMLParser parser, Place place) throws IOException, Refused {
    return text(Optional.ofNullable(parser.getText()).orElse(""), place);
  }

  /** An escape in double quotes can write what the file itself may not hold. */
  private Text text(String value, Place place) throws Refused {
    boolean halfCharacter =
        value.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE);
    if (Source.hasControl(value) || halfCharacter) {
      throw refuse(
          place,
          "an escape here writes a control character; write \\\\ for a backslash, or use single quotes");
    }
    return new Text(value, place);
  }

  /** No plain text begins with these signs, so the letter in the file tells all of them. */
  private void refuseMarks(YAMLParser parser, Place place) throws Refused {
    JsonLocation at = parser.currentTokenLocation();
    if (at.getLineNr() != pointsLine) {
      pointsLine = at.getLineNr();
      points = line(pointsLine).codePoints().toArray();
    }
    int column = at.getColumnNr() - 1;
    int sign = column >= 0 && column < points.length ? points[column] : ' ';
    if (sign == '*' || sign == '&' || sign == '!') {
      throw refuse(place, SyntaxHint.cannotBegin(sign));
    }
  }

  private Listing listing(YAMLParser parser, Place place, int depth) throws IOException, Refused {
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(node(parser, depth + 1));
    }
    return new Listing(items, place);
  }

  private Mapping mapping(YAMLParser parser, Place place, int depth) throws IOException, Refused {
    List<Field> fields = new ArrayList<>();
    Map<String, Place> seen = new HashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      Place at = here(parser);
      refuseMarks(parser, at);
      Text key = text(Optional.ofNullable(parser.currentName()).orElse(""), at);
      if (key.value().equals("<<")) {
        throw refuse(
            at, "the key << would merge other keys in and is not supported; write them out");
      }
      parser.nextToken();
      Node value = node(parser, depth + 1);
      Place first = seen.putIfAbsent(Name.fold(key.value()), at);
      if (first == null) {
        fields.add(new Field(key, value));
      } else {
        problems.error(
            at,
            "key "
                + OneLine.quote(key.value())
                + " stands twice, first at "
                + first.line()
                + ":"
                + first.column()
                + "; keep one");
      }
    }
    return new Mapping(fields, place);
  }

  private Place here(YAMLParser parser) {
    JsonLocation at = parser.currentTokenLocation();
    return place(at.getLineNr(), at.getColumnNr());
  }

  private Place place(int line, int column) {
    return new Place(file, Math.max(1, line) + linesBefore, Math.max(1, column));
  }

  private Refused refuse(Place place, String sentence) {
    problems.error(place, sentence);
    return new Refused();
  }

  private void tellSyntax(IOException e) {
    if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      SyntaxHint hint = SyntaxHint.of(marked, lines);
      problems.error(place(hint.line(), hint.column()), hint.sentence());
      return;
    }
    JsonLocation at =
        e instanceof JacksonException located ? located.getLocation() : JsonLocation.NA;
    problems.error(
        place(at.getLineNr(), at.getColumnNr()),
        "no plain key stands here; write a word, a colon, a space and a value, as hours: 2:45");
  }

  private String line(int number) {
    return number >= 1 && number <= lines.length ? lines[number - 1] : "";
  }
}
