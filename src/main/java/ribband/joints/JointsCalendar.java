package ribband.joints;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.Transparency;
import biweekly.property.Trigger;
import biweekly.util.Duration;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Comparator;
import java.util.Date;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.memory.Hash;
import ribband.shop.Caution;

/**
 * The calendar of what joints and coats call for: iCalendar (RFC 5545), each event with an alarm.
 * The same journal gives the same bytes, and an event keeps its UID whatever is written elsewhere.
 */
public final class JointsCalendar {
  private static final String PRODUCT = "-//Ribband//Joints and coats//EN";

  private static final Set<Due.Kind> KINDS =
      EnumSet.of(Due.Kind.LAST_LOOK, Due.Kind.CLAMPS_OFF, Due.Kind.RECOAT_TO);

  /** Time to walk to the shop before the last look. */
  private static final int WALK_MINUTES = 10;

  private static final int UID_DIGITS = 32;

  private final Bonds bonds;
  private final ShopTalk talk;

  private JointsCalendar(Bonds bonds) {
    this.bonds = bonds;
    this.talk = new ShopTalk(bonds.project().units());
  }

  /** What stands in the calendar, by time; a coat that is covered waits for nothing. */
  public static List<Due> dues(Bonds bonds, Which which) {
    return bonds.all().stream()
        .flatMap(bond -> bond.dues().stream())
        .filter(due -> KINDS.contains(due.kind()))
        .filter(due -> which == Which.ALL || due.isAhead(bonds.now()))
        .sorted(Comparator.comparing(Due::at))
        .toList();
  }

  /**
   * The file.
   *
   * @param dues at least one, as a calendar without an event is none
   */
  public static byte[] of(Bonds bonds, List<Due> dues) {
    JointsCalendar made = new JointsCalendar(bonds);
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    dues.forEach(due -> calendar.addEvent(made.event(due)));
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Folding.of(text.toString()).getBytes(StandardCharsets.UTF_8);
  }

  /** Whether a file is a calendar of ours, so that it may be replaced. */
  public static boolean isOurs(byte[] file) {
    String text = new String(file, StandardCharsets.UTF_8);
    return text.startsWith("BEGIN:VCALENDAR\r\n")
        && text.contains("\r\nPRODID:" + PRODUCT + "\r\n");
  }

  private VEvent event(Due due) {
    Made made = due.of().made();
    Instant begun = due.of().begun().orElseThrow();
    VEvent event = new VEvent();
    event.setUid(uid(due));
    // spec: RFC 5545 3.8.7.2 wants when it was made; the clock would give other bytes at every run.
    event.setDateTimeStamp(Date.from(begun));
    event.setDateStart(Date.from(due.at()));
    event.setSummary(summary(due));
    event.setDescription(description(due));
    event.setTransparency(Transparency.transparent());
    if (due.kind() == Due.Kind.LAST_LOOK
        && !due.at().minusSeconds(WALK_MINUTES * 60L).isBefore(begun)) {
      event.addAlarm(
          alarm(
              "In " + WALK_MINUTES + " minutes: " + made.name() + ", last look",
              Duration.builder().prior(true).minutes(WALK_MINUTES).build()));
    }
    event.addAlarm(alarm(summary(due), Duration.builder().seconds(0).build()));
    return event;
  }

  private static VAlarm alarm(String words, Duration when) {
    return VAlarm.display(new Trigger(when, Related.START), words);
  }

  private static String uid(Due due) {
    Made made = due.of().made();
    String identity =
        String.join(
            "\n",
            made.entry(),
            due.of().kind(),
            Name.fold(made.name()),
            Integer.toString(made.number()),
            due.kind().name());
    return Hash.of(identity.getBytes(StandardCharsets.UTF_8)).substring(0, UID_DIGITS) + "@ribband";
  }

  private static String summary(Due due) {
    return due.of().made().name() + ": " + due.kind().said();
  }

  private String description(Due due) {
    Made made = due.of().made();
    String boat = bonds.project().name() + ", " + Saying.day(made.day());
    String warm = Temper.said(made, talk).map(at -> ", " + at).orElse("");
    return boat + warm + ". " + hint(due) + Caution.GOVERNS;
  }

  private static String hint(Due due) {
    return switch (due.kind()) {
      case LAST_LOOK -> "A slipped clamp can still be put right. ";
      case CLAMPS_OFF -> "It is not fully cured yet. ";
      case RECOAT_TO -> "Afterwards sand first. ";
      case CLOSE, RECOAT_FROM, FULL_CURE -> "";
    };
  }
}
