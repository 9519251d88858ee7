package ribband.measure;

/** A way to read one kind of value from text. */
@FunctionalInterface
public interface Reading<T> {
  /**
   * @param text without surrounding space, as written, never null
   * @throws Unreadable where the text is no such value
   */
  T read(String text) throws Unreadable;
}
