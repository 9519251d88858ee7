package ribband.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.SiteSettings.At;
import ribband.journal.SiteSettings.MoneyShown;
import ribband.journal.SiteSettings.Nowhere;
import ribband.journal.SiteSettings.Robots;
import ribband.journal.SiteSettings.Unsaid;
import ribband.measure.Hours;
import ribband.measure.Mix;
import ribband.measure.Money;
import ribband.measure.Packs;
import ribband.measure.Percent;
import ribband.measure.Proportion;
import ribband.measure.Quantity;
import ribband.measure.Span;
import ribband.measure.SpanRange;
import ribband.measure.Spread;
import ribband.measure.Temperature;
import ribband.measure.Unit;
import ribband.measure.Units;
import ribband.measure.Unreadable;
import ribband.measure.Warmth;
import ribband.problem.Place;
import ribband.shop.Adhesive;

/** A project and an entry that use every key, as the values they are read to. */
class WholeValuesTest {
  private static final String ENTRY = "2026/2026-03-14-garboard.md";
  private static final String PROJECT =
      """
      name: Dunlin
      what: A 15-foot lapstrake skiff
      currency: USD
      units: metric
      time zone: America/Chicago
      started: 2024-09-14
      site: {address: 'https://example.org/dunlin', show money: false, about: about.md, robots: none}
      phases:
        - {id: planking, title: Planking up, hours: 120, cost: 1400}
        - fairing
      carried:
        through: 2025-01-31
        sessions: 12
        hours: {planking: 44.5}
        cost: {planking: 310.20}
      materials:
        epoxy:
          unit: fl oz
          on hand: 20 fl oz
          worth: 38.00
          lead time: 10 days
          never below: 4 fl oz
        ring nails:
      adhesives:
        epoxy:
          material: epoxy
          mix: 2 to 1 by volume
          densities: 1.15 to 0.97
          rated at: 72 F
          pot life: 20 min
          open time: 60 min
          soft for: 90 min
          clamp time: 8 h
          recoat: 3 h to 24 h
          full cure: 7 days
          coldest: 50 F
          spread: 140 in2 per fl oz
      pieces:
        strakes:
          total: 16
          phase: planking
          sides: [port, starboard]
          glue area: 1 in x 96 in
          adhesive: epoxy
          clamps: 10
          hours: 5
      clamps: 24
      away:
        - {from: 2026-07-01, to: 2026-07-20, why: holiday}
        - {from: 2026-09-01, to: 2026-09-01}
      shop temperatures: {jan: 38 F, july: 78 F}
      """;

  @TempDir Path root;

  @BeforeEach
  void layDown() throws IOException {
    write("project.yaml", PROJECT);
    write("about.md", "A boat.\n");
    write("receipts/0314-epoxy.pdf", "%PDF");
    for (String picture : List.of("scarf.jpg", "clamps.jpg")) {
      write("2026/2026-03-14-garboard/" + picture, "");
    }
  }

  private void write(String file, String text) throws IOException {
    JournalFiles.write(root, file, text.getBytes(StandardCharsets.UTF_8));
  }

  private Journal read() throws IOException {
    JournalReader.Read read = JournalFiles.read(root);
    assertEquals(List.of(), JournalFiles.told(read));
    return read.journal();
  }

  private static Amount used(String material, String amount, int line, int column)
      throws Unreadable {
    return new Amount(material, Quantity.read(amount), new Place(ENTRY, line, column));
  }

  private static Optional<Temperature> fahrenheit(String degrees) throws Unreadable {
    return Optional.of(Temperature.read(degrees + " F"));
  }

  private static Optional<Span> span(String text) throws Unreadable {
    return Optional.of(Span.read(text));
  }

  private static Optional<Quantity> amount(String text) throws Unreadable {
    return Optional.of(Quantity.read(text));
  }

  @Test
  void everyKeyOfAProjectIsRead() throws Exception {
    Project project = read().project();
    assertEquals("Dunlin", project.name());
    assertEquals(Optional.of("A 15-foot lapstrake skiff"), project.what());
    assertEquals("USD", project.currency().code());
    assertEquals(Units.METRIC, project.units());
    assertEquals(ZoneId.of("America/Chicago"), project.zone());
    assertEquals(Optional.of(LocalDate.of(2024, 9, 14)), project.started());
    assertEquals(
        new SiteSettings(
            new At(URI.create("https://example.org/dunlin/")),
            MoneyShown.HIDDEN,
            Optional.of("about.md"),
            Robots.NONE),
        project.site());
    assertEquals(
        List.of(
            new Phase(
                "planking",
                "Planking up",
                Optional.of(Hours.ofMinutes(120 * 60)),
                Optional.of(new Money(140_000))),
            new Phase("fairing", "Fairing", Optional.empty(), Optional.empty())),
        project.phases());
    assertEquals(
        new Carried(
            Optional.of(LocalDate.of(2025, 1, 31)),
            12,
            Map.of("planking", Hours.ofMinutes(2670)),
            Map.of("planking", new Money(31_020))),
        project.carried());
    assertEquals(OptionalInt.of(24), project.clamps());
    assertEquals(
        List.of(
            new Away(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 7, 20), Optional.of("holiday")),
            new Away(LocalDate.of(2026, 9, 1), LocalDate.of(2026, 9, 1), Optional.empty())),
        project.away());
    assertEquals(
        Map.of(
            Month.JANUARY, Temperature.read("38 F"),
            Month.JULY, Temperature.read("78 F")),
        project.shopTemperatures());
  }

  @Test
  void everyKeyOfTheCatalogueIsRead() throws Exception {
    Project project = read().project();
    assertEquals(
        Map.of(
            "epoxy",
            new Material(
                "epoxy",
                Optional.of(Unit.read("fl oz")),
                amount("20 fl oz"),
                Optional.of(new Money(3800)),
                span("10 days"),
                amount("4 fl oz")),
            "ring-nails",
            new Material(
                "ring nails",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty())),
        project.materials());
    assertEquals(
        Map.of(
            "epoxy",
            new Adhesive(
                "epoxy",
                Optional.of("epoxy"),
                Optional.of(Mix.read("2 to 1 by volume")),
                Optional.of(Proportion.read("1.15 to 0.97")),
                fahrenheit("72"),
                span("20 min"),
                span("60 min"),
                span("90 min"),
                span("8 h"),
                Optional.of(SpanRange.read("3 h to 24 h")),
                span("7 days"),
                fahrenheit("50"),
                Optional.of(Spread.read("140 in2 per fl oz")))),
        project.adhesives());
    assertEquals(
        Map.of(
            "strakes",
            new PieceKind(
                "strakes",
                16,
                Optional.of("planking"),
                List.of("port", "starboard"),
                amount("1 in x 96 in"),
                Optional.of("epoxy"),
                OptionalInt.of(10),
                Optional.of(Hours.ofMinutes(300)))),
        project.pieces());
  }

  @Test
  void aProjectThatSaysNothingHasPlainValues() throws Exception {
    write("project.yaml", "name: Dunlin\n");
    Project project = read().project();
    assertEquals(
        new SiteSettings(
            new Unsaid(new Place("project.yaml", 1, 1)),
            MoneyShown.SHOWN,
            Optional.empty(),
            Robots.WELCOME),
        project.site());
    assertEquals(Carried.NOTHING, project.carried());
    assertEquals(OptionalInt.empty(), project.clamps());
    assertEquals(ZoneOffset.UTC, project.zone());
  }

  @Test
  void anAddressThatIsNotSaidIsMissedWhereTheSiteIsSpokenOf() throws Exception {
    write("project.yaml", "name: Dunlin\nsite: {show money: true}\n");
    assertEquals(new Unsaid(new Place("project.yaml", 2, 1)), read().project().site().address());
  }

  @Test
  void aBuilderMaySayThatThereIsNoAddress() throws Exception {
    write("project.yaml", "site: {address: none}\n");
    assertEquals(new Nowhere(), read().project().site().address());
  }

  @Test
  void everyKeyOfAnEntryIsRead() throws Exception {
    write(
        ENTRY,
        """
        ---
        title: Garboards on
        phase: planking
        hours: {planking: 2, fairing: 0:45}
        cost: 90
        materials:
          used: {epoxy: 2 fl oz, ring nails: 40}
          left: {ring nails: 160}
          bought:
            - material: epoxy
              amount: 2 of 1 qt
              cost: 64.50
              from: the chandlery
              receipt: receipts/0314-epoxy.pdf
              arrived: 2026-03-22
            - {item: sanding discs, cost: 23.70, phase: fairing}
        pieces: {strakes: {port: 1, starboard: [3, 4]}}
        complete: {planking: 40%}
        joints:
          - name: Starboard garboard scarf
            adhesive: epoxy
            spread at: 20:25
            clamped at: 2026-03-15 00:10
            temperature: 61 F
            area: 2 in x 6 in
        coats:
          - {what: Hull inside, adhesive: epoxy, at: 21:10, temperature: 64 F, area: 38 ft2}
        todo:
          - {id: trim-ends, what: Trim the ends, after: [strakes], phase: fairing, hours: 1.5}
        done: [trim-ends]
        lesson: Dry-fit first.
        photos:
          - {file: scarf.jpg, caption: An hour in, alt: A clamped scarf joint, cover: true}
          - clamps.jpg
        private: true
        mark: Garboards  on
        ---
        Words.
        """);
    Entry entry = read().entries().get(0);
    LocalDateTime eve = LocalDateTime.of(2026, 3, 14, 20, 25);
    Entry expected =
        new Entry(
            ENTRY,
            LocalDate.of(2026, 3, 14),
            "2026-03-14-garboard",
            "Garboards on",
            Optional.of("planking"),
            Map.of("planking", Hours.ofMinutes(120), "fairing", Hours.ofMinutes(45)),
            List.of(
                new Outlay(
                    "planking",
                    new Money(6450),
                    Optional.of(
                        new Purchase(
                            "epoxy",
                            Optional.of("epoxy"),
                            Optional.of(Packs.read("2 of 1 qt")),
                            Optional.of("the chandlery"),
                            Optional.of("receipts/0314-epoxy.pdf"),
                            Optional.of(LocalDate.of(2026, 3, 22))))),
                new Outlay(
                    "fairing",
                    new Money(2370),
                    Optional.of(
                        new Purchase(
                            "sanding discs",
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()))),
                new Outlay("planking", new Money(180), Optional.empty())),
            List.of(used("epoxy", "2 fl oz", 7, 17), used("ring nails", "40", 7, 38)),
            List.of(used("ring nails", "160", 8, 22)),
            List.of(
                new PieceWork(
                    "strakes", Optional.of("port"), 1, List.of(), new Place(ENTRY, 17, 26)),
                new PieceWork(
                    "strakes",
                    Optional.of("starboard"),
                    2,
                    List.of(3, 4),
                    new Place(ENTRY, 17, 40))),
            Map.of("planking", Percent.read("40%")),
            List.of(
                new Joint(
                    "Starboard garboard scarf",
                    Optional.of("epoxy"),
                    Optional.of(eve),
                    Optional.of(LocalDateTime.of(2026, 3, 15, 0, 10)),
                    fahrenheit("61").map(Warmth::of),
                    amount("2 in x 6 in"))),
            List.of(
                new Coat(
                    "Hull inside",
                    Optional.of("epoxy"),
                    Optional.of(eve.plusMinutes(45)),
                    fahrenheit("64").map(Warmth::of),
                    amount("38 ft2"))),
            List.of(
                new Job(
                    "trim-ends",
                    "Trim the ends",
                    List.of(new Mark("strakes", new Place(ENTRY, 29, 50))),
                    Optional.of("fairing"),
                    Optional.of(Hours.ofMinutes(90)),
                    new Place(ENTRY, 29, 10))),
            List.of(new Mark("trim-ends", new Place(ENTRY, 30, 8))),
            List.of("Dry-fit first."),
            Optional.of("Garboards on"),
            List.of(
                new Photo(
                    "2026/2026-03-14-garboard/scarf.jpg",
                    Optional.of("An hour in"),
                    Optional.of("A clamped scarf joint"),
                    true,
                    0,
                    new Place(ENTRY, 33, 12)),
                new Photo(
                    "2026/2026-03-14-garboard/clamps.jpg",
                    Optional.empty(),
                    Optional.empty(),
                    false,
                    1,
                    new Place(ENTRY, 34, 5))),
            Entry.Shown.PRIVATE,
            "Words.\n",
            38);
    assertEquals(expected, entry);
    assertFalse(entry.isPublic());
  }

  @Test
  void withNoPlanThePhasesAreThoseTheEntriesName() throws Exception {
    write(
        "project.yaml",
        """
        currency: USD
        carried: {hours: {lofting: 2}, cost: {lofting: 1, timber: 3}}
        """);
    write(
        "2026-03-01.md",
        """
        ---
        phase: planking
        hours: {side-decks: 1}
        cost: {varnish: 5}
        complete: {backbone: 100%}
        todo: [{id: a, what: b, phase: rigging}]
        ---
        """);
    assertEquals(
        List.of("lofting", "timber", "planking", "side-decks", "varnish", "backbone", "rigging"),
        read().phases().stream().map(Phase::id).toList());
  }

  @Test
  void eachFileIsStampedAsItWasWhenListed() throws Exception {
    Instant then = Instant.parse("2026-03-14T20:25:00Z");
    for (String file : List.of("project.yaml", "about.md", "receipts/0314-epoxy.pdf")) {
      Files.setLastModifiedTime(root.resolve(file), FileTime.from(then));
    }
    Files.setLastModifiedTime(root.resolve("about.md"), FileTime.from(then.plusSeconds(60)));
    for (String picture : List.of("scarf.jpg", "clamps.jpg")) {
      Path file = root.resolve("2026/2026-03-14-garboard").resolve(picture);
      Files.setLastModifiedTime(file, FileTime.from(then));
    }
    JournalFolder folder = JournalFolder.list(root, root.resolve("site"));
    assertEquals(root.toRealPath(), folder.root());
    Instant later = then.plusSeconds(61);
    assertEquals(8, folder.stamp("about.md", later).size());
    assertTrue(folder.stamp("about.md", then.plusSeconds(62)).settled());
    assertFalse(folder.stamp("about.md", later).settled());
    assertTrue(folder.isSettled(then.plusSeconds(62)));
    assertFalse(folder.isSettled(later));
    String state = folder.state();
    assertEquals(state, JournalFolder.list(root, root.resolve("site")).state());
    write("about.md", "A bark.\n");
    Files.setLastModifiedTime(root.resolve("about.md"), FileTime.from(then));
    assertNotEquals(state, JournalFolder.list(root, root.resolve("site")).state());
  }
}
