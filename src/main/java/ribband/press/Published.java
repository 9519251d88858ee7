package ribband.press;

import java.util.List;

/**
 * What a publish did; the list of files itself is not counted.
 *
 * @param written files new or changed
 * @param unchanged files the site already held, not touched
 * @param removed files of the old site that are needed no longer
 * @param left site paths needed no longer, but changed by somebody else since, so left alone; in
 *     order, and from now on not ours
 */
public record Published(int written, int unchanged, int removed, List<String> left) {
  public Published {
    left = List.copyOf(left);
  }
}
