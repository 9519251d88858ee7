package ribband.journal;

import java.time.LocalDate;
import java.util.Optional;

/** Days on which nobody builds; both ends are in it. */
public record Away(LocalDate from, LocalDate to, Optional<String> why) {}
