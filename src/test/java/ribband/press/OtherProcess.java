package ribband.press;

import java.nio.file.Path;

/** A run in a process of its own: opens the press, says so, and waits to be killed. */
final class OtherProcess {
  private OtherProcess() {}

  /**
   * @param arguments output, journal
   */
  public static void main(String[] arguments) throws Exception {
    try (Press press = Press.open(Path.of(arguments[0]), Path.of(arguments[1]))) {
      press.put("index.html", new byte[] {1});
      System.out.println("open");
      System.out.flush();
      System.in.read();
    }
  }
}
