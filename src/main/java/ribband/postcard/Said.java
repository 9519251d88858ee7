package ribband.postcard;

/** Whether all words of a text stand on the card. */
enum Said {
  WHOLE,
  SHORTENED
}
