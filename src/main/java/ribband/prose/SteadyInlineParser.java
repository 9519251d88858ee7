package ribband.prose;

import com.vladsch.flexmark.parser.InlineParserExtensionFactory;
import com.vladsch.flexmark.parser.delimiter.DelimiterProcessor;
import com.vladsch.flexmark.parser.internal.CommonmarkInlineParser;
import com.vladsch.flexmark.parser.internal.LinkRefProcessorData;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Flexmark's inline parser with its steps that take exponential or square time replaced by linear
 * ones: link labels, link titles, pointed destinations and runs of backticks.
 */
final class SteadyInlineParser extends CommonmarkInlineParser {
  private static final int LONGEST_LABEL = 999;
  private static final String ESCAPABLE = "!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~";

  private BasedSequence measured;
  private Map<Integer, Integer> lastRuns = Map.of();

  SteadyInlineParser(
      DataHolder options,
      BitSet specialCharacters,
      BitSet delimiterCharacters,
      Map<Character, DelimiterProcessor> delimiterProcessors,
      LinkRefProcessorData linkRefProcessors,
      List<InlineParserExtensionFactory> extensions) {
    super(
        options,
        specialCharacters,
        delimiterCharacters,
        delimiterProcessors,
        linkRefProcessors,
        extensions);
  }

  /** CommonMark 0.31.2, 'link label': brackets only escaped, at most 999 characters. */
  @Override
  public int parseLinkLabel() {
    int end = closing(index, '[', ']', "[");
    if (end < 0 || end - index > LONGEST_LABEL + 2) {
      return 0;
    }
    int length = end - index;
    index = end;
    return length;
  }

  /** CommonMark 0.31.2, 'link title'. */
  @Override
  public BasedSequence parseLinkTitle() {
    if (index == 0 || !isBlank(input.charAt(index - 1))) {
      return null;
    }
    char opener = peek();
    int end =
        switch (opener) {
          case '"', '\'' -> closing(index, opener, opener, "\0");
          case '(' -> closing(index, '(', ')', "(\0");
          default -> -1;
        };
    return taken(end);
  }

  /** CommonMark 0.31.2, 'link destination'. */
  @Override
  public BasedSequence parseLinkDestination() {
    if (peek() == '<') {
      return taken(closing(index, '<', '>', "<\n\0"));
    }
    return super.parseLinkDestination();
  }

  /** A run that no later run of its length closes is text at once, without a search. */
  @Override
  protected boolean parseBackticks() {
    if (measured != input) {
      measured = input;
      lastRuns = lastRuns(input);
    }
    int end = index;
    while (end < input.length() && input.charAt(end) == '`') {
      end++;
    }
    if (lastRuns.getOrDefault(end - index, -1) > index) {
      return super.parseBackticks();
    }
    BasedSequence run = input.subSequence(index, end);
    index = end;
    appendText(run);
    return true;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\n';
  }

  private BasedSequence taken(int end) {
    if (end < 0) {
      return null;
    }
    BasedSequence found = input.subSequence(index, end);
    index = end;
    return found;
  }

  /** The offset behind the closing mark, or -1; a backslash hides the punctuation behind it. */
  private int closing(int start, char opener, char closer, String never) {
    if (start >= input.length() || input.charAt(start) != opener) {
      return -1;
    }
    for (int i = start + 1; i < input.length(); i++) {
      char c = input.charAt(i);
      if (c == '\\' && i + 1 < input.length() && ESCAPABLE.indexOf(input.charAt(i + 1)) >= 0) {
        i++;
      } else if (c == closer) {
        return i + 1;
      } else if (never.indexOf(c) >= 0) {
        return -1;
      }
    }
    return -1;
  }

  private static Map<Integer, Integer> lastRuns(BasedSequence text) {
    Map<Integer, Integer> last = new HashMap<>();
    for (int i = 0; i < text.length(); i++) {
      int start = i;
      while (i < text.length() && text.charAt(i) == '`') {
        i++;
      }
      if (i > start) {
        last.put(i - start, start);
      }
    }
    return last;
  }
}
