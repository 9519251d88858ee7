package ribband.spoken;

/** English names of one and of several: {@code strake}, {@code strakes}. */
final class Plural {
  private Plural() {}

  /** The name of one; the same where it looks like that already. */
  static String singular(String name) {
    if (name.endsWith("ies") && name.length() > 4) {
      return name.substring(0, name.length() - 3) + "y";
    }
    if (name.matches(".*(?:ch|sh|ss|x|z)es")) {
      return name.substring(0, name.length() - 2);
    }
    if (name.endsWith("lves")) {
      return name.substring(0, name.length() - 3) + "f";
    }
    boolean several = name.endsWith("s") && !name.endsWith("ss") && name.length() > 2;
    return several ? name.substring(0, name.length() - 1) : name;
  }

  /** The name of several, of a name of one. */
  static String of(String name) {
    if (name.matches(".*[^aeiou]y")) {
      return name.substring(0, name.length() - 1) + "ies";
    }
    if (name.endsWith("lf")) {
      return name.substring(0, name.length() - 1) + "ves";
    }
    return name + (name.matches(".*(?:ch|sh|s|x|z)") ? "es" : "s");
  }
}
