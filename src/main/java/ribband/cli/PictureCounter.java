package ribband.cli;

import ribband.album.PictureProof;
import ribband.measure.Saying;

/** Counts pictures on one line of the terminal, where a person watches. */
final class PictureCounter implements PictureProof.Progress {
  private final Surroundings around;
  private final boolean shown;

  PictureCounter(Surroundings around, Common options) {
    this.around = around;
    this.shown = around.isWatched() && !options.isQuiet();
  }

  @Override
  public void done(int pictures, int of) {
    if (shown) {
      around.err().print("\rpictures " + Saying.count(pictures) + " of " + Saying.count(of));
      if (pictures == of) {
        // The count gives way to what came of it.
        around.err().print("\r" + " ".repeat(40) + "\r");
      }
      around.err().flush();
    }
  }
}
