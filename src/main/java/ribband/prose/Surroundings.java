package ribband.prose;

import java.util.Optional;

/** What the relative targets of a text stand for on the site. */
public interface Surroundings {
  /** The address that a relative link gets in the page; empty: its words stay as plain text. */
  Optional<String> href(Mention link);

  /** The print that a picture shows; empty: the picture is left out, its words stay as text. */
  Optional<Print> print(Mention picture);
}
