package ribband.site;

import java.util.List;

/**
 * An entry as a search looks at it and shows it.
 *
 * @param href from the site's root, encoded
 * @param day said, the year last
 * @param hours said; empty for none
 * @param phases titles of those it worked in
 * @param materials names of what it used and bought
 * @param text the first words of its text; may be empty
 */
public record SearchEntry(
    String href,
    String title,
    String day,
    String hours,
    List<String> phases,
    List<String> materials,
    List<String> lessons,
    List<String> captions,
    String text) {
  public SearchEntry {
    phases = List.copyOf(phases);
    materials = List.copyOf(materials);
    lessons = List.copyOf(lessons);
    captions = List.copyOf(captions);
  }
}
