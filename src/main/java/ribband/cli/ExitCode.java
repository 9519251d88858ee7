package ribband.cli;

/** How a run ended, for the shell. */
final class ExitCode {
  static final int DONE = 0;

  /** The journal has errors; no figure was printed. */
  static final int JOURNAL_HAS_ERRORS = 1;

  static final int WRONG_USAGE = 2;

  /** Disk, permission, lock, or an encoding that cannot say a name. */
  static final int SURROUNDINGS = 3;

  /** A defect of the program itself. */
  static final int DEFECT = 70;

  private ExitCode() {}
}
