/** The floor that every start of a Java program stands on. */
class Hello {
  public static void main(String[] args) {
    System.out.println("hello");
  }
}
