package ribband.journal;

import java.util.Optional;
import ribband.problem.Place;

/**
 * A picture an entry shows.
 *
 * @param file journal path
 * @param cover whether it stands for the entry
 * @param batch pictures of one batch came in together and stand by the time they were taken;
 *     batches stand in order
 */
public record Photo(
    String file,
    Optional<String> caption,
    Optional<String> alt,
    boolean cover,
    int batch,
    Place place) {}
