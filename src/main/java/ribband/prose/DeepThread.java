package ribband.prose;

/** A thread with room for the deepest text that is read; it does not keep the program alive. */
final class DeepThread extends Thread {
  private static final long STACK_BYTES = 32L << 20;

  DeepThread(Runnable work) {
    super(null, work, "prose", STACK_BYTES);
    setDaemon(true);
  }

  static boolean isCurrent() {
    return Thread.currentThread() instanceof DeepThread;
  }
}
