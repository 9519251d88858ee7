package ribband.measure;

import java.util.Objects;

/** A text that is not what its place asks for; carries what is wrong and what to write instead. */
public final class Unreadable extends Exception {
  private static final long serialVersionUID = 1L;

  private final String wrong;
  private final String cure;

  /**
   * @param wrong goes on from the quoted text: {@code is not a length of time}
   * @param cure what to write instead: {@code write 2:45}
   */
  public Unreadable(String wrong, String cure) {
    super(wrong + "; " + cure, null, false, false);
    this.wrong = Objects.requireNonNull(wrong);
    this.cure = Objects.requireNonNull(cure);
  }

  public String wrong() {
    return wrong;
  }

  public String cure() {
    return cure;
  }
}
