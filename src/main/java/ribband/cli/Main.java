package ribband.cli;

/** The program's start; the only place that ends the Java machine. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    int code = new Ribband(Surroundings.ofThisMachine()).run(args);
    // A good run returns, so that it can be called inside a machine that has more to do.
    if (code != ExitCode.DONE) {
      System.exit(code);
    }
  }
}
