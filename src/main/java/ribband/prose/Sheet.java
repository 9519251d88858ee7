package ribband.prose;

import java.util.Map;

/**
 * All that one rendering needs beside the parsed text.
 *
 * @param hrefs address of each relative link that has one
 * @param prints print of each picture that has one
 */
record Sheet(Findings findings, Map<Mention, String> hrefs, Map<Mention, Print> prints) {
  Sheet {
    hrefs = Map.copyOf(hrefs);
    prints = Map.copyOf(prints);
  }
}
