package ribband.cli;

/** The program's start; hands the arguments to the commands. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.out.println("ribband");
  }
}
