package ribband.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import ribband.album.Album;
import ribband.album.AlbumReader;
import ribband.album.KeptPictures;
import ribband.album.PictureProof;
import ribband.album.Showing;
import ribband.memory.Memory;
import ribband.photo.PrintRun;
import ribband.press.Press;
import ribband.problem.Problems;
import ribband.stock.Stock;
import ribband.stock.Stock.Told;

/**
 * A journal with its words parsed and its pictures looked at, for {@code check} and {@code publish}
 * alike.
 *
 * @param open with what is wrong in words, pictures and stock added
 * @param stock as of the last entry's day
 * @param memories of earlier runs; to be saved by who may write
 */
record Inspection(
    OpenJournal open, Album album, Stock stock, PictureProof proof, List<Memory> memories) {
  Inspection {
    memories = List.copyOf(memories);
  }

  static Inspection of(OpenJournal open, Showing showing, Instant now) throws IOException {
    Path folder = Press.workFolder(open.output());
    Memory pictures = Memory.load(folder.resolve("pictures"), "1");
    Memory texts = Memory.load(folder.resolve("texts"), Version.buildOr(now));
    KeptPictures kept = new KeptPictures(open.journal().folder(), pictures, now);
    Problems problems = new Problems();
    Album album = AlbumReader.read(open.journal(), showing, kept, texts, problems);
    Stock stock = stock(open);
    problems.addAll(stock.warnings());
    PictureProof proof = new PictureProof(album, kept, PrintRun.onThisMachine());
    return new Inspection(open.with(problems), album, stock, proof, List.of(pictures, texts));
  }

  /** Nothing can be reckoned from a journal with errors. */
  private static Stock stock(OpenJournal open) {
    LocalDate asOf = open.journal().asOf().orElse(LocalDate.EPOCH);
    return open.errors() > 0 ? Stock.NONE : Stock.of(open.journal(), asOf, Told.TO_READERS);
  }

  /** A journal looked at whole, words and pictures too, as {@code check} and figures want it. */
  static Inspection whole(OpenJournal open, Instant now, PictureProof.Progress progress)
      throws IOException, InterruptedException {
    Inspection inspection = of(open, Showing.NOWHERE, now);
    Problems problems = new Problems();
    inspection.proof().tryOut(progress, problems);
    return inspection.with(problems);
  }

  Inspection with(Problems more) {
    return new Inspection(open.with(more), album, stock, proof, memories);
  }
}
