package ribband.photo;

/** What a file is that is of none of our kinds, and what to do about it. */
public enum OtherKind {
  HEIC("is a HEIC picture; export it as JPEG"),
  AVIF("is an AVIF picture; export it as JPEG"),
  RAW("is a camera RAW picture; export it as JPEG"),
  /** Several makers' raw files are plain TIFF at their start. */
  TIFF("is a TIFF or camera RAW picture; export it as JPEG"),
  BMP("is a BMP picture; export it as PNG"),
  PSD("is a PSD picture; export it as JPEG"),
  ICO("is an ICO picture; export it as PNG"),
  EPS("is an EPS picture; export it as PNG"),
  PDF("is a PDF; export its page as JPEG or PNG"),
  VIDEO("is a video; export one frame of it as JPEG"),
  TEXT("is text and no picture; name a JPEG or PNG"),
  UNKNOWN("is no picture known here; export it as JPEG or PNG");

  private final String sentence;

  OtherKind(String sentence) {
    this.sentence = sentence;
  }

  /** Without its subject: the caller puts the file's name before it. */
  public String sentence() {
    return sentence;
  }
}
