package ribband.journal;

import java.time.LocalDateTime;
import java.util.Optional;
import ribband.measure.Quantity;
import ribband.measure.Temperature;

/** A coat laid; its time is local to the project's zone. */
public record Coat(
    String what,
    Optional<String> adhesive,
    Optional<LocalDateTime> at,
    Optional<Temperature> temperature,
    Optional<Quantity> area) {}
