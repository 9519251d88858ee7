package ribband.press;

/** The output is not a place where this site may be written; the message says what to do. */
public final class PressRefused extends Exception {
  private static final long serialVersionUID = 1L;

  PressRefused(String wrong, String cure) {
    super(wrong + "; " + cure);
  }
}
