package ribband.measure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Copies of maps that nobody changes and that keep their order. */
public final class Ordered {
  private Ordered() {}

  /** A copy; most maps of a journal hold one thing or none, and take no more room than that. */
  public static <K, V> Map<K, V> copy(Map<K, V> map) {
    return map.size() < 2 ? Map.copyOf(map) : Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
