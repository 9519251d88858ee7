package ribband.cli;

import java.io.IOException;
import java.util.Optional;
import ribband.journal.Journal;

/** The journal that figures are told from: one without an error. */
final class SoundJournal {
  private SoundJournal() {}

  /**
   * Reads it whole.
   *
   * <p>spec: no figure is printed from a journal with errors, those of pictures included.
   *
   * @throws Refusal where it has errors, which have been told
   */
  static Journal read(Surroundings around, JournalArgument which, Common options)
      throws IOException, InterruptedException {
    return read(around, which.folder(), options);
  }

  /**
   * The same of a folder as typed; without one the nearest upward.
   *
   * @throws Refusal where it has errors, which have been told
   */
  static Journal read(Surroundings around, Optional<String> folder, Common options)
      throws IOException, InterruptedException {
    return inspect(around, folder, options).open().journal();
  }

  /**
   * The same with its words and pictures.
   *
   * @throws Refusal where it has errors, which have been told
   */
  static Inspection inspect(Surroundings around, Optional<String> folder, Common options)
      throws IOException, InterruptedException {
    Inspection inspection =
        Inspection.whole(
            OpenJournal.open(around, folder, options.today(around.clock())),
            around.clock().instant(),
            new PictureCounter(around, options));
    new ProblemTeller(around, options).requireSound(inspection.open(), ", no figure is told");
    return inspection;
  }
}
