package ribband.chart;

/**
 * The words around a chart.
 *
 * @param id unique on its page; a letter, then letters, digits and hyphens
 * @param title what the chart shows, in a few words
 * @param description how it is drawn, for one who cannot see it
 * @param summary what it says, in one sentence; stands under the drawing
 */
public record Caption(String id, String title, String description, String summary) {
  public Caption {
    if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
      throw new IllegalArgumentException("not an id: " + id);
    }
    if (title.isBlank() || description.isBlank() || summary.isBlank()) {
      throw new IllegalArgumentException("chart " + id + " lacks words");
    }
  }
}
