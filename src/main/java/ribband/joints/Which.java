package ribband.joints;

/** Which joints and coats are listed. */
public enum Which {
  LIVE,
  ALL
}
