package ribband.postcard;

/** A place on the card, in units from its upper left corner. */
record Box(double x, double y, double width, double height) {
  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  Box within(double margin) {
    return new Box(x + margin, y + margin, width - 2 * margin, height - 2 * margin);
  }
}
