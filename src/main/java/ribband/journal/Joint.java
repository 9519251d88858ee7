package ribband.journal;

import java.time.LocalDateTime;
import java.util.Optional;
import ribband.measure.Quantity;
import ribband.measure.Warmth;

/** A joint glued; its times are local to the project's zone. */
public record Joint(
    String name,
    Optional<String> adhesive,
    Optional<LocalDateTime> spreadAt,
    Optional<LocalDateTime> clampedAt,
    Optional<Warmth> temperature,
    Optional<Quantity> area) {}
