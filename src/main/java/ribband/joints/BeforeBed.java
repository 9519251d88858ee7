package ribband.joints;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.measure.Name;
import ribband.measure.Night;
import ribband.measure.Saying;
import ribband.measure.Span;
import ribband.problem.Paragraph;
import ribband.problem.Problem;
import ribband.shop.Adhesive;
import ribband.shop.Caution;
import ribband.shop.Figure;

/** Says what must still be looked at before bed, in order of time; what is unknown comes last. */
public final class BeforeBed {

  /** The next time in the shop is as late as this one. */
  private static final Duration A_DAY = Duration.ofHours(24);

  /** So long a look that was missed is still told. */
  private static final Duration RECENTLY = Duration.ofHours(1);

  private final Bonds bonds;
  private final Instant now;
  private final ZoneId zone;

  /** The night it is, which begins in the evening of its date. */
  private final LocalDate night;

  private final List<Call> calls = new ArrayList<>();

  /** What could not be read, a sentence each. */
  private final List<String> doubts;

  /**
   * What somebody has to do.
   *
   * @param at empty where no time is known
   */
  private record Call(Optional<Instant> at, String words) {}

  private BeforeBed(Bonds bonds, Journal journal, List<Problem> problems) {
    this.bonds = bonds;
    this.now = bonds.now();
    this.zone = bonds.project().zone();
    this.night = Night.at(local(now));
    this.doubts = Doubts.of(journal, problems, night);
  }

  /**
   * Lines of at most 80 characters, each with its end.
   *
   * @param journal which may have errors
   * @param problems all of its own: where an entry of these days or the project has errors, nobody
   *     is told that nothing is soft
   */
  public static String of(Journal journal, List<Problem> problems, Instant now) {
    BeforeBed bed = new BeforeBed(Bonds.of(journal, now), journal, problems);
    bed.bonds.live().forEach(bed::bond);
    return bed.text(bed.isResinUsed(journal));
  }

  private void bond(Bond bond) {
    if (bond instanceof GluedJoint joint) {
      joint(joint);
    } else if (bond instanceof LaidCoat coat) {
      coat(coat);
    }
  }

  private void joint(GluedJoint joint) {
    String name = joint.made().name();
    joint
        .closeBy()
        .value()
        .filter(by -> joint.clampedAt().isEmpty() && !by.isBefore(now))
        .ifPresent(by -> call(by, name + ": close the joint" + ahead(by)));
    if (joint.lastLook().value().isPresent() && joint.softUntil().value().isPresent()) {
      look(name, joint.lastLook().value().get(), joint.softUntil().value().get());
    } else {
      unknown(joint, "last look", joint.lastLook());
    }
    joint
        .clampsOff()
        .value()
        .filter(off -> off.isAfter(now.minus(A_DAY)) && !off.isAfter(nightEnds()))
        .ifPresent(off -> call(off, name + ": clamps may come off" + ahead(off)));
  }

  private void look(String name, Instant look, Instant soft) {
    String until = moment(soft);
    if (!look.isBefore(now)) {
      call(look, name + ": last look" + ahead(look) + "; soft until " + until);
    } else if (soft.isAfter(now)) {
      call(look, name + ": look now, it is soft until " + until);
    } else if (soft.isAfter(now.minus(RECENTLY))) {
      call(look, name + ": was soft until " + until + " and cannot be moved any more");
    }
  }

  private void coat(LaidCoat coat) {
    String name = coat.made().name();
    unknown(coat, "next coat", coat.recoatTo());
    coat.recoatTo()
        .value()
        .filter(to -> !to.isBefore(now) && to.isBefore(now.plus(A_DAY)))
        .ifPresent(
            to ->
                call(
                    to,
                    name
                        + ": last chance to coat without sanding"
                        + ahead(to)
                        + coat.recoatFrom()
                            .value()
                            .filter(now::isBefore)
                            .map(from -> "; not before " + moment(from))
                            .orElse("")));
  }

  /** Only of what was made tonight: of older ones it was told then. */
  private void unknown(Bond bond, String what, Figure<Instant> when) {
    if (when.value().isEmpty() && isTonights(bond)) {
      calls.add(
          new Call(Optional.empty(), bond.made().name() + ": " + what + " unknown: " + when.why()));
    }
  }

  private boolean isTonights(Bond bond) {
    return !bond.made().day().isBefore(night);
  }

  private Instant nightEnds() {
    return Night.endOf(night).atZone(zone).toInstant();
  }

  private void call(Instant at, String words) {
    calls.add(new Call(Optional.of(at), words));
  }

  private boolean isResinUsed(Journal journal) {
    Set<String> resins = new HashSet<>();
    for (Adhesive adhesive : journal.project().adhesives().values()) {
      resins.add(Name.fold(adhesive.material().orElse(adhesive.name())));
    }
    return journal.entries().stream()
        .filter(entry -> entry.date().equals(night))
        .map(Entry::used)
        .flatMap(List::stream)
        .anyMatch(used -> resins.contains(Name.fold(used.material())));
  }

  private String text(boolean isResinUsed) {
    StringBuilder text = new StringBuilder();
    if (calls.isEmpty() && doubts.isEmpty()) {
      text.append("nothing is soft: nothing to look at before bed\n");
    }
    if (!calls.isEmpty()) {
      text.append(Paragraph.of("", 0, "before bed (" + zoneName() + "):"));
      calls.sort(Comparator.comparing(call -> call.at().orElse(Instant.MAX)));
      int widest = calls.stream().mapToInt(call -> time(call).length()).max().orElse(0);
      for (Call call : calls) {
        String time = time(call);
        String head = "  " + time + " ".repeat(widest - time.length()) + "  ";
        text.append(Paragraph.of(head, head.length(), call.words()));
      }
    }
    doubts.forEach(doubt -> text.append(Paragraph.of("", 0, doubt)));
    Set<Caution> cautions = cautions(isResinUsed);
    cautions.forEach(caution -> text.append(Paragraph.of("", 0, caution.words())));
    if (!cautions.isEmpty() || !bonds.live().isEmpty()) {
      text.append(Caution.GOVERNS).append('\n');
    }
    return text.toString();
  }

  /** What is left in a cup or on a rag goes on while the builder sleeps. */
  private Set<Caution> cautions(boolean isResinUsed) {
    Set<Caution> cautions = EnumSet.noneOf(Caution.class);
    List<Bond> tonights = bonds.live().stream().filter(this::isTonights).toList();
    if (isResinUsed || !tonights.isEmpty()) {
      cautions.add(Caution.CUP);
    }
    if (tonights.stream().anyMatch(LaidCoat.class::isInstance)) {
      cautions.add(Caution.SOLVENT);
    }
    return cautions;
  }

  private String time(Call call) {
    return call.at().map(this::moment).orElse("");
  }

  private String ahead(Instant at) {
    if (at.isBefore(now)) {
      return " now";
    }
    long minutes = Duration.between(now, at).toMinutes();
    return minutes == 0 ? " now" : ", in " + Saying.span(new Span(minutes * 60));
  }

  private String moment(Instant at) {
    return Saying.moment(local(at), local(now).toLocalDate());
  }

  private LocalDateTime local(Instant at) {
    return at.atZone(zone).toLocalDateTime();
  }

  private String zoneName() {
    return zone.equals(ZoneOffset.UTC) ? "UTC" : zone.getId();
  }
}
