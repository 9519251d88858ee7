package ribband.journal;

import java.time.LocalDateTime;
import java.util.Optional;
import ribband.measure.Quantity;
import ribband.measure.Warmth;

/** A coat laid; its time is local to the project's zone. */
public record Coat(
    String what,
    Optional<String> adhesive,
    Optional<LocalDateTime> at,
    Optional<Warmth> temperature,
    Optional<Quantity> area) {}
