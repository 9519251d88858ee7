package ribband.spoken;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Phase;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;

class SpokenLineTest {
  private static final String NAMES =
      """
      name: Dunlin
      currency: %s
      phases:
        - {id: rails, title: Rails and trim}
        - {id: side-decks, title: Side decks}
        - {id: inside, title: Side benches & lockers}
        - {id: two, title: Two}
      pieces:
        rails: {total: 4, sides: [port, starboard]}
        ring-frames: {total: 7, sides: [port, starboard]}
        oar: {total: 2}
        boxes: {total: 3}
      """;

  @TempDir Path folder;

  private Boat boat(String currency) throws IOException {
    return Boat.of(folder, NAMES.formatted(currency));
  }

  private Boat boat() throws IOException {
    return Boat.ofDocument(folder);
  }

  @Test
  void recordsHoldWhatWasSaidInItsOrder() throws IOException {
    Boat boat = boat();
    Spoken spoken =
        boat.hear(
            "fairing 0:45, 23.70 sanding discs, scrapped strakes 3 and 4 port, planking 2:00,"
                + " refund 5.00 glue, a knee, nice night");
    assertEquals(
        new Spoken(
            List.of(
                new Worked(Optional.of("fairing"), Hours.ofMinutes(45)),
                new Worked(Optional.of("planking"), Hours.ofMinutes(120))),
            Optional.of("fairing"),
            List.of(
                new Spent("sanding discs", new Money(2370)), new Spent("glue", new Money(-500))),
            List.of(
                new Piece(
                    boat.project().pieceKind("strakes").orElseThrow(),
                    Optional.of("port"),
                    List.of(-3, -4),
                    -2),
                new Piece(
                    boat.project().pieceKind("knees").orElseThrow(),
                    Optional.empty(),
                    List.of(),
                    1)),
            List.of(new Loose("nice night", Optional.empty()))),
        spoken);
  }

  @Test
  void nothingSaidIsNothing() throws IOException {
    Spoken nothing = new Spoken(List.of(), Optional.empty(), List.of(), List.of(), List.of());
    for (String line : List.of("", "  ", "\t\n", ", ;", "and", "\u0007", "“”", "...")) {
      assertEquals(nothing, boat().hear(line), line);
    }
  }

  @Test
  void whereTheProjectListsNoPhaseThoseOfTheEntriesCount() throws IOException {
    Boat bare = Boat.of(folder, "name: Dunlin\n");
    assertEquals(
        List.of(
            "into the text: \"planking 2:45\": \"planking\" is not known here, so the hours are not"
                + " counted"),
        bare.told("planking 2:45"));
    Phase used = new Phase("planking", "Planking", Optional.empty(), Optional.empty());
    assertEquals(
        List.of("planking 2¾ h"), new Boat(bare.project(), List.of(used)).told("planking 2:45"));
  }

  @Test
  void withNoCurrencyMoneyIsLoose() throws IOException {
    Boat bare = Boat.of(folder, "name: Dunlin\n");
    String why = ": project.yaml names no currency; write there currency: USD or your own";
    assertEquals(List.of("into the text: \"$12 discs\"" + why), bare.told("$12 discs"));
    assertEquals(
        List.of("into the text: \"paid 12 for discs\"" + why), bare.told("paid 12 for discs"));
    assertEquals(
        List.of("into the text: \"23.70 sanding discs\""), bare.told("23.70 sanding discs"));
  }

  @Test
  void aCurrencyIsCalledByItsSignCodeOrName() throws IOException {
    assertEquals(List.of("CAD\u00a012.50 for discs"), boat("CAD").told("$12.50 discs"));
    assertEquals(List.of("CAD\u00a012.50 for discs"), boat("CAD").told("cad 12.50 discs"));
    assertEquals(List.of("£12.50 for discs"), boat("GBP").told("£12.50 discs"));
    assertEquals(List.of("€12.50 for discs"), boat("EUR").told("12,50€ discs"));
    assertEquals(List.of("€12.00 for discs"), boat("EUR").told("12 euros for discs"));
    assertEquals(List.of("€12.00 back for discs"), boat("EUR").told("-€12 discs"));
    assertEquals(List.of("SEK\u00a0120.00 for discs"), boat("SEK").told("discs 120 kronor"));
    assertEquals(List.of("HUF\u00a012,500.00 for discs"), boat("HUF").told("discs 12500 forint"));
    assertEquals(List.of("¥1,200 for discs"), boat("JPY").told("¥1200 discs"));
    assertEquals(List.of("into the text: \"1200 discs\""), boat("JPY").told("1200 discs"));
    assertEquals(List.of("KWD\u00a01.500 for discs"), boat("KWD").told("1.500 discs"));
    assertEquals(List.of("into the text: \"1,500 discs\""), boat("KWD").told("1,500 discs"));
    assertEquals(
        List.of("into the text: \"KWD 1,500 discs\": has a thousands mark; write 1500"),
        boat("KWD").told("KWD 1,500 discs"));
    assertEquals(
        List.of("into the text: \"¥1,200 discs\": has a thousands mark; write 1200"),
        boat("JPY").told("¥1,200 discs"));
  }

  /** A longer one is no list that somebody says. */
  @Test
  void aListHasTwentyFiveNumbersAtMost() throws IOException {
    Boat boat = Boat.of(folder, "pieces: {ribs: {total: 40}}\n");
    List<String> numbers = IntStream.rangeClosed(1, 25).mapToObj(Integer::toString).toList();
    String list = String.join(", ", numbers);
    assertEquals(List.of("ribs " + Saying.list(numbers)), boat.told("ribs " + list));
    assertEquals(
        List.of(
            "ribs " + Saying.list(numbers),
            "into the text: \"26\": may be hours, money or pieces; write 2.75 h, or say what it was"
                + " for"),
        boat.told("ribs " + list + ", 26"));
  }

  @Test
  void anotherCurrencyIsNotCounted() throws IOException {
    for (String said :
        List.of(
            "$12 discs", "12 dollars discs", "12.50 USD discs", "XAF 12.50 discs", "₹12 discs")) {
      assertEquals(
          List.of("into the text: \"" + said + "\": is not in EUR; write what it came to in EUR"),
          boat("EUR").told(said));
    }
    assertEquals(List.of("€12.50 for pen nibs"), boat("EUR").told("12.50 pen nibs"));
  }

  @Test
  void aNameThatIsPhaseAndPieceIsTakenWhereTheFigureTells() throws IOException {
    Boat boat = boat("USD");
    assertEquals(List.of("rails 1¾ h"), boat.told("rails 1:45"));
    assertEquals(List.of("rails 2 h"), boat.told("rails 2 hours"));
    assertEquals(
        List.of(
            "into the text: \"rails 2\": may be two things; write hours as 2:45, money with its"
                + " sign"),
        boat.told("rails 2"));
    assertEquals(List.of("rail 2"), boat.told("rail 2"));
  }

  @Test
  void namesOfSeveralWordsAreOne() throws IOException {
    Boat boat = boat("USD");
    assertEquals(List.of("side-decks 1½ h"), boat.told("side decks 1:30"));
    assertEquals(List.of("side-decks 1½ h"), boat.told("Side-Decks 1:30"));
    assertEquals(List.of("inside 1½ h"), boat.told("side benches and lockers 1:30"));
    assertEquals(List.of("inside 1½ h"), boat.told("side benches & lockers, 1:30"));
    assertEquals(List.of("2 ring-frames port"), boat.told("two ring frames port"));
    assertEquals(List.of("1 ring-frame"), boat.told("a ring-frame"));
    assertEquals(List.of("2 oars"), boat.told("both oars"));
    assertEquals(List.of("1 box"), boat.told("a box done"));
  }

  @Test
  void aFirstWordThatTwoTitlesShareIsNoName() throws IOException {
    assertEquals(
        List.of("into the text: \"side 1:30\": \"side\" is no phase; did you mean \"side-decks\"?"),
        boat("USD").told("side 1:30"));
  }

  @Test
  void aPhaseGoesByItsIdItsTitleAndTheFirstWordThatIsItsAlone() throws IOException {
    Boat boat =
        Boat.of(
            folder,
            """
            phases:
              - {id: outside, title: Hull paint}
              - {id: inside, title: Hull varnish}
              - {id: rig, title: Mast and sail}
              - {id: place, title: On}
            """);
    for (String name : List.of("rig", "mast and sail", "mast")) {
      assertEquals(List.of("rig 1½ h"), boat.told(name + " 1:30"), name);
    }
    assertEquals(List.of("outside 1½ h"), boat.told("hull paint 1:30"));
    assertEquals(List.of("inside 1½ h"), boat.told("inside 1:30"));
    assertEquals(
        List.of(
            "into the text: \"hull 1:30\": \"hull\" is no phase; there are outside, inside, rig,"
                + " place"),
        boat.told("hull 1:30"));
    // Small words mean something of their own.
    assertEquals(List.of("1½ h"), boat.told("on 1:30"));
    assertEquals(
        List.of(
            "into the text: \"place 1:30\": \"place\" may be the phase or a plain word; write its"
                + " hours into the entry"),
        boat.told("place 1:30"));
  }

  @Test
  void aPhaseThatIsCalledLikeANumberIsNotHeard() throws IOException {
    assertEquals(List.of("2 h"), boat("USD").told("two hours"));
  }

  @Test
  void sidesShareTheTotalAndTheLastMayBeOnEither() throws IOException {
    Boat boat = boat("USD");
    assertEquals(List.of("4 ring-frames port"), boat.told("4 ring frames port"));
    assertEquals(
        List.of(
            "into the text: \"5 ring frames port\": there are 4 ring-frames on a side; look at the"
                + " figure again"),
        boat.told("5 ring frames port"));
    assertEquals(
        List.of(
            "into the text: \"4 ring frames each side\": there are 7 ring-frames; look at the"
                + " figure again"),
        boat.told("4 ring frames each side"));
    assertEquals(List.of("7 ring-frames"), boat.told("7 ring frames"));
  }

  @Test
  void aWordIsNeverWideEnoughToSteerATerminal() throws IOException {
    assertEquals(
        List.of("into the text: \"a [x red\\u202e night\""),
        boat().told("a \u001b[x red\u202e night"));
    assertEquals(
        List.of(new Loose("half a \ufffd", Optional.empty())),
        boat().hear("half a \ud83d").loose());
  }

  @Test
  void aSentenceKeepsItsStopAndItsQuotes() throws IOException {
    assertEquals(
        List.of("planking 2 h", "into the text: \"Then “it rained.”\""),
        boat().told("Planking 2 hours. Then “it rained.”"));
    assertEquals(
        List.of("planking 2 h", "into the text: \"it rained, then it stopped...\""),
        boat().told("planking 2 hours, it rained, then it stopped..."));
    assertEquals(
        List.of("planking 2 h", "into the text: \"And so to bed\""),
        boat().told("And so to bed; planking 2"));
  }
}
