package ribband.card;

/** Why a file is left out, in the order in which the reasons are told. */
public enum Reason {
  HEIC,
  /** A camera's raw file, or a TIFF, as which many of them begin. */
  RAW,
  /** AVIF, BMP and others. */
  OTHER_FORMAT,
  FILM,
  /** Taken before the window, or last written before it where nothing in it tells a time. */
  OLDER,
  /** Taken after the window. */
  LATER,
  /** Nothing in it tells when it was taken. */
  NO_TIME,
  /** The journal has a file of the same content, under whatever name. */
  ALREADY_THERE,
  /** Another file on the card has the same content, and that one is picked. */
  TWICE_ON_THE_CARD,
  /** Cut short, overwritten, empty; or sound but larger than what is read. */
  DAMAGED,
  /** Also a link to a folder, which is not gone into, and one that leads nowhere. */
  UNREADABLE,
  NO_PICTURE
}
