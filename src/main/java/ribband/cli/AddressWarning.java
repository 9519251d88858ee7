package ribband.cli;

import ribband.journal.Project;
import ribband.journal.SiteSettings.Unsaid;
import ribband.problem.Problems;

/** What a publish says of a site whose address nobody spoke of. */
final class AddressWarning {
  private static final String SENTENCE =
      "the site has no address, so it has no feed; write site: {address:"
          + " 'https://example.org/boat/'}, or site: {address: none} where there shall be none";

  private AddressWarning() {}

  /** One warning, or none. */
  static Problems of(Project project) {
    Problems problems = new Problems();
    if (project.site().address() instanceof Unsaid unsaid) {
      problems.warning(unsaid.place(), SENTENCE);
    }
    return problems;
  }
}
