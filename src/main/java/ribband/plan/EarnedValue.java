package ribband.plan;

import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.measure.Hours;

/**
 * Plan against actual by the formulas of earned value, in hours. All that leaves is in seconds of
 * work or a bare ratio, exact; an index that is undefined is empty.
 *
 * <p>Source: the formulas of standard earned value management, as in USPS Supplying Principles and
 * Practices 5-1.3.
 *
 * @param bac budget at completion: the hours planned
 * @param ac actual cost: the hours worked
 * @param complete the share that is done, 0 to 1
 */
public record EarnedValue(Hours bac, Hours ac, BigFraction complete) {
  public EarnedValue {
    Objects.requireNonNull(bac);
    Objects.requireNonNull(ac);
    if (complete.signum() < 0 || complete.compareTo(BigFraction.ONE) > 0) {
      throw new IllegalArgumentException("share " + complete);
    }
  }

  /** Earned value: the planned hours of what is done. */
  public BigFraction ev() {
    return planned().multiply(complete);
  }

  /** Cost variance: below zero where more was worked than earned. */
  public BigFraction cv() {
    return ev().subtract(worked());
  }

  /** Cost performance index: hours earned by an hour worked. */
  public Optional<BigFraction> cpi() {
    return ac.isZero() ? Optional.empty() : Optional.of(ev().divide(worked()));
  }

  /** Estimate at completion, at the rate so far. */
  public Optional<BigFraction> eac() {
    return etc().map(worked()::add);
  }

  /** Estimate to complete, at the rate so far. */
  public Optional<BigFraction> etc() {
    return cpi().filter(cpi -> cpi.signum() > 0).map(cpi -> left().divide(cpi));
  }

  /** Variance at completion: below zero where it will take more than planned. */
  public Optional<BigFraction> vac() {
    return eac().map(planned()::subtract);
  }

  /**
   * To-complete performance index: the rate at which the rest would still end on plan; none where
   * the planned hours are used up and no rate does.
   */
  public Optional<BigFraction> tcpi() {
    BigFraction unused = planned().subtract(worked());
    boolean isLost = unused.signum() < 0 && left().signum() > 0;
    return unused.signum() == 0 || isLost ? Optional.empty() : Optional.of(left().divide(unused));
  }

  /** The planned hours of what is not done. */
  BigFraction left() {
    return planned().subtract(ev());
  }

  private BigFraction planned() {
    return BigFraction.of(bac.seconds());
  }

  private BigFraction worked() {
    return BigFraction.of(ac.seconds());
  }
}
