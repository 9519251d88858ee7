package ribband.joints;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import ribband.shop.Adhesive;

/**
 * What is known of a joint or a coat before any time is reckoned.
 *
 * @param entry its address
 * @param day the entry's date
 * @param number which of that name in the entry, from 0
 * @param mixed reckoned where an area is given and no use was written
 * @param forgotten when it is passed over where no time of it is known
 */
public record Made(
    String name,
    String entry,
    LocalDate day,
    int number,
    Optional<Adhesive> adhesive,
    Warm warm,
    Optional<EstimatedUse> mixed,
    Instant forgotten) {
  /** Whether it is colder than its adhesive likes. */
  public boolean isCold() {
    return adhesive.filter(warm::isColdFor).isPresent();
  }
}
