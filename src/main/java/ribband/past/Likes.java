package ribband.past;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Warns of rows that say the same: two sessions, or one that is there twice. */
final class Likes {
  private Likes() {}

  static void warn(String file, List<PastSession> sessions, Problems problems) {
    Map<List<Object>, PastSession> seen = new HashMap<>();
    for (PastSession session : sessions) {
      PastSession like = seen.putIfAbsent(session.said(), session);
      if (like != null) {
        int row = session.at().row();
        problems.warning(
            new Place(file, row, 0),
            "row "
                + row
                + " says the same as row "
                + like.at().row()
                + "; both are brought, so take one out if it is there twice");
      }
    }
  }
}
