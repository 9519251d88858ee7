package ribband.past;

import java.util.List;
import ribband.problem.Problem;

/**
 * What came out of a spreadsheet.
 *
 * @param file as the builder named it
 * @param sessions in the order of their dates, those of one day as in the sheet
 * @param remarks how it was read, one line each
 * @param problems in the order of their places; where one is an error, no session may be brought
 */
public record Past(
    String file, List<PastSession> sessions, List<String> remarks, List<Problem> problems) {
  public Past {
    sessions = List.copyOf(sessions);
    remarks = List.copyOf(remarks);
    problems = List.copyOf(problems);
  }

  public boolean isSound() {
    return problems.stream().noneMatch(Problem::isError);
  }
}
