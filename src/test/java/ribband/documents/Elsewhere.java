package ribband.documents;

import java.util.Arrays;
import java.util.Optional;

/** Examples that are run by a test of their own, or by none, and why. */
enum Elsewhere {
  JOURNAL_CASES("docs/journal-format.md", "(markdown|yaml|text (files|figures|problems)).*"),
  JOINTS("docs/journal-format.md", "text joints"),
  HOSTING("docs/hosting.md", "(rsync|scp|ssh|cp|sha256sum) .*"),
  /** A build does not run a build; `.ci/run` and `.ci/smoke` give these. */
  BUILD(
      "(README|DEVELOPERS|docs/tests|docs/reliability).md",
      "(mvn|JAZZER_FUZZ=1 mvn|.ci/faults) .*"),
  /** Wants root, or another system; `.ci/packages` does of these what can be done here. */
  INSTALLING("docs/install.md", ".*"),
  /** Never ends by itself; the first week watches. */
  WATCH("README.md", "ribband watch .*"),
  /** Draws the picture that stands beside it, once. */
  ICON("DEVELOPERS.md", "chromium .*"),
  /** Formulas in words; the commands below each are run, and the tests of ribband.shop reckon. */
  FORMULAS("docs/shop-arithmetic.md", "text formula"),
  /** A drawing of a folder. */
  TREES("docs/(journal-format|papers).md", "text tree");

  private final String documents;
  private final String examples;

  Elsewhere(String documents, String examples) {
    this.documents = documents;
    this.examples = examples;
  }

  /**
   * @param what a block's kind and name, or a command
   */
  static Optional<Elsewhere> of(String document, String what) {
    return Arrays.stream(values())
        .filter(one -> document.matches(one.documents) && what.matches(one.examples))
        .findFirst();
  }
}
