package ribband.telling;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import ribband.album.Album;
import ribband.album.AlbumReader;
import ribband.album.PictureMemory;
import ribband.album.Showing;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.ledger.Cell;
import ribband.ledger.Ledger;
import ribband.ledger.Purchases;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.memory.Memory;
import ribband.problem.Problem;
import ribband.problem.Problems;
import ribband.stock.Stock;
import ribband.whole.FullJournal;

/** An invented dinghy's journal on disk, and what the papers are made of once it is read. */
final class Teal {
  private static final Currency USD = Currency.all().get("USD");

  private final Path folder;

  Teal(Path folder) {
    this.folder = folder;
  }

  Teal with(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text, StandardCharsets.UTF_8);
    return this;
  }

  /** An entry of these keys, without words. */
  Teal entry(String name, String keys) throws IOException {
    return with(name + ".md", "---\n" + keys + "---\n");
  }

  /** A picture of its own: no other has that width. */
  Teal picture(String file, int width) throws IOException {
    FullJournal.picture(folder.resolve(file), width, 200);
    return this;
  }

  Journal journal() throws IOException {
    JournalReader.Read read =
        JournalReader.read(
            JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2030, 1, 1));
    requireSound(read.problems());
    return read.journal();
  }

  Album album() throws IOException {
    Problems problems = new Problems();
    Memory nothing = Memory.load(folder.resolveSibling("no-memory"), "a build");
    Album album =
        AlbumReader.read(journal(), Showing.NOWHERE, PictureMemory.NONE, nothing, problems);
    requireSound(problems.sorted());
    return album;
  }

  private static void requireSound(List<Problem> problems) {
    List<Problem> errors = problems.stream().filter(Problem::isError).toList();
    if (!errors.isEmpty()) {
      throw new AssertionError("the journal has errors: " + errors);
    }
  }

  static Stock stock(Journal journal) {
    return Stock.of(journal, journal.asOf().orElse(LocalDate.EPOCH), Stock.Told.TO_READERS);
  }

  Papers papers() throws IOException {
    Album album = album();
    return new Papers(album, Ledger.of(album.journal()), stock(album.journal()));
  }

  PapersPage.View view() throws IOException {
    Album album = album();
    Journal journal = album.journal();
    Ledger ledger = Ledger.of(journal);
    Purchases purchases = Purchases.withUnpriced(journal);
    return new PapersPage(
            album,
            ledger,
            stock(journal),
            purchases,
            Receipts.of(purchases, journal.folder()),
            ChosenPictures.of(album, ledger))
        .view();
  }

  WorkTables work() throws IOException {
    Journal journal = journal();
    return new WorkTables(journal, Ledger.of(journal));
  }

  SpendingTables spending() throws IOException {
    Journal journal = journal();
    Purchases purchases = Purchases.withUnpriced(journal);
    return new SpendingTables(journal, purchases, Receipts.of(purchases, journal.folder()));
  }

  ShopTables shop() throws IOException {
    Journal journal = journal();
    return new ShopTables(journal, stock(journal));
  }

  static ColumnHours worked(long minutes) {
    return ColumnHours.of(Hours.ofMinutes(minutes));
  }

  static Cell usd(long cents) {
    return new Cell.Paid(new Money(cents), USD);
  }

  static Cell unpaid() {
    return new Cell.Paid(Money.ZERO, Currency.NONE);
  }
}
