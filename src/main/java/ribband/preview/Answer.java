package ribband.preview;

import java.nio.charset.StandardCharsets;

/**
 * What a browser is sent.
 *
 * @param status of HTTP
 * @param type of the content, as HTTP names it
 */
record Answer(int status, String type, byte[] content) {
  static final int FOUND = 200;
  static final int NOTHING_NEW = 204;
  static final int MISSING = 404;
  static final int ONLY_READ = 405;
  static final int NOT_FOR_US = 421;
  static final int NOT_YET = 503;

  static Answer words(int status, String words) {
    return new Answer(status, ContentType.of(".txt"), words.getBytes(StandardCharsets.UTF_8));
  }
}
