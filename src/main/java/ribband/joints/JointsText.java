package ribband.joints;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Span;
import ribband.problem.Paragraph;
import ribband.shop.Adhesive;
import ribband.shop.Caution;
import ribband.shop.Figure;

/** Says joints and coats to the builder: a block for each, what is next, and the cautions. */
public final class JointsText {
  private static final int LABEL = 13;

  private final Bonds bonds;
  private final ShopTalk talk;
  private final StringBuilder text = new StringBuilder();

  private JointsText(Bonds bonds) {
    this.bonds = bonds;
    this.talk = new ShopTalk(bonds.project().units());
  }

  /** Lines of at most 80 characters, each with its end. */
  public static String of(Bonds bonds, Which which) {
    JointsText told = new JointsText(bonds);
    told.tell(bonds.listed(which));
    return told.text.toString();
  }

  private void tell(List<Bond> listed) {
    LocalDate today = local(bonds.now()).toLocalDate();
    line(
        bonds.project().name()
            + ", joints and coats on "
            + Saying.day(today)
            + " at "
            + moment(bonds.now(), today)
            + " ("
            + zone()
            + ")");
    text.append('\n');
    listed.forEach(this::block);
    if (bonds.live().isEmpty()) {
      line(nothing(listed));
      if (listed.isEmpty()) {
        return;
      }
    } else {
      line(
          bonds
              .next()
              .map(due -> "Next: " + next(due, today))
              .orElse("Next: nothing that is known."));
    }
    text.append('\n');
    cautions(listed).forEach(caution -> line(caution.words()));
    line(Caution.GOVERNS);
  }

  private String zone() {
    ZoneId zone = bonds.project().zone();
    return zone.equals(ZoneOffset.UTC) ? "UTC" : zone.getId();
  }

  private String nothing(List<Bond> listed) {
    if (bonds.all().isEmpty()) {
      return "No joint and no coat is written down yet.";
    }
    String nothing = "Nothing is soft, in clamps or curing, and no coat waits for the next one";
    return listed.isEmpty() ? nothing + "; see all with: ribband joints --all" : nothing + ".";
  }

  private String next(Due due, LocalDate today) {
    return due.of().made().name()
        + ", "
        + due.kind().said()
        + ": "
        + moment(due.at(), today)
        + ahead(due.at())
        + ".";
  }

  private void block(Bond bond) {
    line(bond.made().name() + ": " + bond.state(bonds.now()).said());
    if (bond instanceof GluedJoint joint) {
      joint(joint);
    } else if (bond instanceof LaidCoat coat) {
      coat(coat);
    }
    row("full cure", bond, bond.fullCure(), "");
    bond.made()
        .mixed()
        .ifPresent(
            use ->
                row(
                    "mixed",
                    talk.reckoned(use.amount())
                        + " of "
                        + use.material()
                        + ", estimated from the area"));
    text.append('\n');
  }

  private void joint(GluedJoint joint) {
    row("glued", made(joint, "spread at ", joint.spreadAt()));
    if (joint.clampedAt().isPresent()) {
      row("closed", closed(joint, joint.clampedAt().get()));
    } else {
      row("close by", joint, joint.closeBy(), "");
    }
    boolean atOnce = joint.isLookedAtAtOnce();
    row("last look", joint, joint.lastLook(), atOnce ? "at once, " : "");
    row("soft until", joint, joint.softUntil(), "");
    row("clamps off", joint, joint.clampsOff(), "");
  }

  private String closed(GluedJoint joint, Instant clamped) {
    String when = moment(clamped, joint.made().day());
    Figure<Duration> late = joint.late();
    return late.value()
        .map(
            by -> {
              String latest = moment(joint.closeBy().value().orElseThrow(), joint.made().day());
              return by.isZero()
                  ? when + ", in time: the latest was " + latest
                  : when + ", " + said(by) + " late: the latest was " + latest;
            })
        .orElse(when + "; whether in time is unknown: " + late.why());
  }

  private void coat(LaidCoat coat) {
    row("laid", made(coat, "at ", coat.at()));
    if (coat.coveredAt().isPresent()) {
      row("coated over", covered(coat, coat.coveredAt().get()));
      return;
    }
    if (coat.recoatFrom().value().isEmpty() && coat.recoatFrom().equals(coat.recoatTo())) {
      row("next coat", coat, coat.recoatFrom(), "");
      return;
    }
    row("next coat", coat, coat.recoatFrom(), "from ");
    row("sand after", coat, coat.recoatTo(), "");
  }

  private String covered(LaidCoat coat, Instant over) {
    String when = moment(over, coat.made().day());
    if (coat.recoatFrom().value().filter(over::isBefore).isPresent()) {
      return when + ", too soon: " + window(coat);
    }
    if (coat.recoatTo().value().filter(over::isAfter).isPresent()) {
      return when + ", after it had to be sanded: " + window(coat);
    }
    return coat.recoatTo().value().isPresent() ? when + ", in time: " + window(coat) : when;
  }

  private String window(LaidCoat coat) {
    LocalDate day = coat.made().day();
    Function<Figure<Instant>, String> end =
        figure -> figure.value().map(at -> moment(at, day)).orElse("an unknown time");
    return "without sanding from "
        + end.apply(coat.recoatFrom())
        + " to "
        + end.apply(coat.recoatTo());
  }

  /** {@code 14 March 2026, spread at 20:25, epoxy, at 61 °F}. */
  private String made(Bond bond, String at, Optional<Instant> begun) {
    List<String> parts = new ArrayList<>();
    Made made = bond.made();
    parts.add(Saying.day(made.day()));
    begun.ifPresent(moment -> parts.add(at + moment(moment, made.day())));
    made.adhesive().map(Adhesive::name).ifPresent(parts::add);
    Temper.said(made, talk).ifPresent(parts::add);
    return String.join(", ", parts);
  }

  private void row(String label, Bond bond, Figure<Instant> figure, String before) {
    boolean isLive = bond.isLive(bonds.now());
    row(
        label,
        figure
            .value()
            .map(at -> before + moment(at, bond.made().day()) + (isLive ? ahead(at) : ""))
            .orElse("unknown: " + figure.why()));
  }

  private void row(String label, String words) {
    String head = "  " + label + " ".repeat(LABEL - label.length());
    text.append(Paragraph.of(head, head.length(), words));
  }

  private void line(String words) {
    text.append(Paragraph.of("", 0, words));
  }

  private String ahead(Instant at) {
    Duration left = Duration.between(bonds.now(), at);
    if (left.abs().toMinutes() == 0) {
      return ", now";
    }
    return left.isNegative() ? ", " + said(left.negated()) + " ago" : ", in " + said(left);
  }

  /** To the minute; from two days on, to the day. */
  private static String said(Duration time) {
    boolean isLong = time.toHours() >= 48;
    return Saying.span(new Span(isLong ? time.toDays() * 86_400 : time.toMinutes() * 60));
  }

  private String moment(Instant at, LocalDate day) {
    return Saying.moment(local(at), day);
  }

  private LocalDateTime local(Instant at) {
    return at.atZone(bonds.project().zone()).toLocalDateTime();
  }

  private static Set<Caution> cautions(List<Bond> listed) {
    Set<Caution> cautions = EnumSet.of(Caution.RESIN);
    if (listed.stream().anyMatch(bond -> bond instanceof LaidCoat)) {
      cautions.add(Caution.DUST);
    }
    if (listed.stream().anyMatch(bond -> bond.made().isCold())) {
      cautions.add(Caution.HEAT);
    }
    return cautions;
  }
}
