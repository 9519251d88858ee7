/**
 * An entry's text: Markdown in, safe HTML, links and plain words out; the only user of Flexmark and
 * of the HTML sanitizer. Enters: a {@link ribband.prose.Body} and, to render, the {@link
 * ribband.prose.Surroundings} that say where links lead and which print a picture shows. Leaves: a
 * {@link ribband.prose.Manuscript}, problems, HTML. Start at {@link ribband.prose.Prose}.
 */
package ribband.prose;
