package ribband.measure;

/** Which units amounts are shown in; any may be written. */
public enum Units {
  US,
  METRIC
}
