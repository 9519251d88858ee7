package ribband.joints;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.validate.ValidationEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;

/**
 * The calendar against RFC 5545, by ical4j, which did not write it: 3.6 and 3.6.1 (what a calendar
 * and an event must have), 3.6.6 (alarms), 3.1 (lines of 75 octets), 3.3.11 (escapes).
 */
class JointsCalendarTest {
  private static final String PROJECT =
      """
      name: Dunlin
      time zone: America/Chicago
      adhesives:
        epoxy:
          rated at: 72 F
          soft for: 90 min
          clamp time: 8 h
          recoat: 3 h to 24 h
      """;
  private static final String SCARF =
      "  - {name: Scarf, adhesive: epoxy, spread at: 20:25, clamped at: 20:40, temperature: 61 F}\n";
  private static final String COAT =
      "coats:\n  - {what: Hull, adhesive: epoxy, at: 21:10, temperature: 54 F}\n";

  @TempDir Path folder;

  private byte[] calendar(String keys, String now, Which which) throws IOException {
    Journal journal = Journals.read(folder, PROJECT, "2026-03-14", keys);
    Bonds bonds =
        Bonds.of(journal, LocalDateTime.parse(now).atZone(journal.project().zone()).toInstant());
    return JointsCalendar.of(bonds, JointsCalendar.dues(bonds, which));
  }

  private byte[] whole(String keys) throws IOException {
    return calendar(keys, "2026-03-14T00:00", Which.LIVE);
  }

  /** Read by the other library, and valid without a remark. */
  private static List<VEvent> events(byte[] file) throws Exception {
    Calendar read = new CalendarBuilder().build(new ByteArrayInputStream(file));
    assertEquals(Set.<ValidationEntry>of(), read.validate(true).getEntries(), () -> text(file));
    return read.getComponents("VEVENT");
  }

  private static String text(byte[] file) {
    return new String(file, StandardCharsets.UTF_8);
  }

  private static String value(Component component, String property) {
    return component.getProperty(property).map(Property::getValue).orElse("");
  }

  private static Set<String> uids(byte[] file) throws Exception {
    return events(file).stream().map(e -> value(e, "UID")).collect(Collectors.toSet());
  }

  @Test
  void theWholeFile() throws Exception {
    byte[] file = whole("joints:\n" + SCARF);
    assertEquals(
        """
        BEGIN:VCALENDAR
        VERSION:2.0
        PRODID:-//Ribband//Joints and coats//EN
        BEGIN:VEVENT
        UID:UID-1
        DTSTAMP:20260315T012500Z
        DTSTART:20260315T032700Z
        SUMMARY:Scarf: last look
        DESCRIPTION:Dunlin\\, 14 March 2026\\, at 61 °F. A slipped clamp can still b
         e put right. The maker's data sheet and local rules govern.
        TRANSP:TRANSPARENT
        BEGIN:VALARM
        ACTION:DISPLAY
        TRIGGER;RELATED=START:-PT10M
        DESCRIPTION:In 10 minutes: Scarf\\, last look
        END:VALARM
        BEGIN:VALARM
        ACTION:DISPLAY
        TRIGGER;RELATED=START:PT0S
        DESCRIPTION:Scarf: last look
        END:VALARM
        END:VEVENT
        BEGIN:VEVENT
        UID:UID-2
        DTSTAMP:20260315T012500Z
        DTSTART:20260315T135400Z
        SUMMARY:Scarf: clamps off
        DESCRIPTION:Dunlin\\, 14 March 2026\\, at 61 °F. It is not fully cured yet.\s
         The maker's data sheet and local rules govern.
        TRANSP:TRANSPARENT
        BEGIN:VALARM
        ACTION:DISPLAY
        TRIGGER;RELATED=START:PT0S
        DESCRIPTION:Scarf: clamps off
        END:VALARM
        END:VEVENT
        END:VCALENDAR
        """
            .replace("\n", "\r\n"),
        text(file)
            .replaceFirst("UID:[0-9a-f]{32}@ribband", "UID:UID-1")
            .replaceFirst("UID:[0-9a-f]{32}@ribband", "UID:UID-2"));
    assertEquals(2, events(file).size());
  }

  @Test
  void aCoatHasTheEndOfItsWindow() throws Exception {
    List<VEvent> events = events(whole(COAT));
    assertEquals(1, events.size());
    assertEquals("Hull: last chance to coat without sanding", value(events.get(0), "SUMMARY"));
    assertEquals("20260317T021000Z", value(events.get(0), "DTSTART"));
    assertEquals(
        "Dunlin, 14 March 2026, at 54 °F. Afterwards sand first. The maker's data sheet and local"
            + " rules govern.",
        value(events.get(0), "DESCRIPTION"));
    assertEquals(1, events.get(0).getComponentList().getAll().size());
  }

  @Test
  void everyEventIsAheadUnlessAllAreAskedFor() throws Exception {
    String keys = "joints:\n" + SCARF + COAT;
    assertEquals(3, events(whole(keys)).size());
    assertEquals(2, events(calendar(keys, "2026-03-14T22:28", Which.LIVE)).size());
    assertEquals(1, events(calendar(keys, "2026-03-16T09:00", Which.LIVE)).size());
    assertEquals(3, events(calendar(keys, "2027-03-16T09:00", Which.ALL)).size());
  }

  @Test
  void sameJournalSameBytesAndTheClockIsNotInThem() throws Exception {
    String keys = "joints:\n" + SCARF + COAT;
    assertArrayEquals(whole(keys), whole(keys));
    assertArrayEquals(
        calendar(keys, "2026-03-20T00:00", Which.ALL),
        calendar(keys, "2029-01-01T12:34", Which.ALL));
  }

  /** Another joint before it, and a temperature mended, change no UID. */
  @Test
  void anEventKeepsItsUidWhateverElseIsWritten() throws Exception {
    Set<String> before = uids(whole("joints:\n" + SCARF + COAT));
    String more = "  - {name: Breasthook, adhesive: epoxy, spread at: 19:00}\n";
    Set<String> after = uids(whole("joints:\n" + more + SCARF + COAT));
    assertTrue(after.containsAll(before), before + " in " + after);
    assertEquals(before.size() + 2, after.size());
    assertEquals(before, uids(whole("joints:\n" + SCARF.replace("61", "64") + COAT)));
    assertEquals(before, uids(whole("joints:\n" + SCARF.replace("Scarf", "SCARF") + COAT)));
  }

  @Test
  void jointsOfOneNameHaveUidsOfTheirOwn() throws Exception {
    assertEquals(4, uids(whole("joints:\n" + SCARF + SCARF)).size());
    assertEquals(
        3,
        uids(whole("joints:\n" + SCARF + "coats: [{what: Scarf, adhesive: epoxy, at: 21:10}]"))
            .size());
  }

  @Test
  void namesAreReadBackAsTheyAreWritten() throws Exception {
    for (String name :
        List.of(
            "Scarf, port; the \\n long one",
            "Spant 3½ – Stevenknie, Bug",
            "継手".repeat(40),
            "🛶".repeat(50) + "é, ;",
            "x".repeat(200),
            "a:b=c\"d")) {
      String quoted = "'" + name.replace("'", "''") + "'";
      byte[] file = whole("joints:\n" + SCARF.replace("Scarf", quoted));
      assertEquals(
          new TreeSet<>(Set.of(name + ": last look", name + ": clamps off")),
          events(file).stream()
              .map(event -> value(event, "SUMMARY"))
              .collect(Collectors.toCollection(TreeSet::new)));
      for (String line : text(file).split("\r\n")) {
        assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
      }
    }
  }

  @Test
  void aCalendarOfOursIsKnownAndAnotherIsNot() throws Exception {
    byte[] ours = whole("joints:\n" + SCARF);
    assertTrue(JointsCalendar.isOurs(ours));
    assertFalse(JointsCalendar.isOurs(new byte[0]));
    assertFalse(
        JointsCalendar.isOurs(
            text(ours).replace("-//Ribband", "-//Another").getBytes(StandardCharsets.UTF_8)));
    assertFalse(JointsCalendar.isOurs(("note\r\n" + text(ours)).getBytes(StandardCharsets.UTF_8)));
  }
}
