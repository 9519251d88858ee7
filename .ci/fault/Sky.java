import java.nio.charset.Charset;
import java.time.Instant;
import java.util.Locale;
import java.util.TimeZone;

/** Says under which sky a Java finds itself, so that a sky that was never set is not taken for one. */
final class Sky {
  private Sky() {}

  public static void main(String[] arguments) {
    System.out.println(
        Locale.getDefault()
            + " "
            + TimeZone.getDefault().getRawOffset() / 3_600_000
            + " "
            + Instant.now().toString().substring(0, 4)
            + " "
            + Charset.defaultCharset()
            + " "
            + Runtime.getRuntime().availableProcessors());
  }
}
