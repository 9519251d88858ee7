package ribband.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import ribband.album.Album;
import ribband.album.AlbumReader;
import ribband.album.KeptPictures;
import ribband.album.PictureProof;
import ribband.album.Showing;
import ribband.memory.Memory;
import ribband.photo.PrintRun;
import ribband.press.Press;
import ribband.problem.Problems;

/**
 * A journal with its words parsed and its pictures looked at, for {@code check} and {@code publish}
 * alike.
 *
 * @param open with what is wrong in words and pictures added
 * @param memory of earlier runs; to be saved by who may write
 */
record Inspection(OpenJournal open, Album album, PictureProof proof, Memory memory) {
  private static final String MEMORY = "pictures";

  static Inspection of(OpenJournal open, Showing showing, Instant now) throws IOException {
    Path folder = Press.workFolder(open.output());
    Memory memory = Memory.load(folder.resolve(MEMORY), "1");
    KeptPictures kept = new KeptPictures(open.journal().folder(), memory, now);
    Problems problems = new Problems();
    Album album = AlbumReader.read(open.journal(), showing, kept, problems);
    PictureProof proof = new PictureProof(album, kept, PrintRun.onThisMachine());
    return new Inspection(open.with(problems), album, proof, memory);
  }

  /** A journal looked at whole, words and pictures too, as {@code check} and figures want it. */
  static OpenJournal whole(OpenJournal open, Instant now, PictureProof.Progress progress)
      throws IOException, InterruptedException {
    Inspection inspection = of(open, Showing.NOWHERE, now);
    Problems problems = new Problems();
    inspection.proof().tryOut(progress, problems);
    return inspection.with(problems).open();
  }

  Inspection with(Problems more) {
    return new Inspection(open.with(more), album, proof, memory);
  }
}
