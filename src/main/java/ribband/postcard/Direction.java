package ribband.postcard;

/** The way in which words are read. */
enum Direction {
  RIGHTWARD,
  LEFTWARD
}
