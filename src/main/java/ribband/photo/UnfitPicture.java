package ribband.photo;

/**
 * Why a picture cannot be shown, and what to do about it: {@code is cut short; copy it again from
 * the camera}. A sentence without its subject: the caller puts the file's name before it.
 */
public final class UnfitPicture extends Exception {
  private static final long serialVersionUID = 1L;

  public UnfitPicture(String sentence) {
    super(sentence);
  }

  UnfitPicture(String sentence, Throwable cause) {
    super(sentence, cause);
  }

  static UnfitPicture cutShort() {
    return new UnfitPicture("is cut short; copy it again from the camera");
  }

  static UnfitPicture damaged() {
    return new UnfitPicture("is damaged; copy it again from the camera");
  }

  static UnfitPicture damaged(Throwable cause) {
    return new UnfitPicture("is damaged; copy it again from the camera", cause);
  }
}
