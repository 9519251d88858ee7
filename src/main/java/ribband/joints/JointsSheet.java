package ribband.joints;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.ledger.Cell;
import ribband.ledger.Sheet;
import ribband.measure.ShopTalk;
import ribband.shop.Adhesive;
import ribband.shop.Figure;

/**
 * Joints and coats for other programs: times in ISO 8601 with the project's offset, an empty cell
 * where a time is unknown, and why in the column {@code unknown}.
 */
public final class JointsSheet {
  private static final List<String> COLUMNS =
      List.of(
          "kind",
          "name",
          "entry",
          "adhesive",
          "temperature",
          "temperature_from",
          "state",
          "spread_at",
          "clamped_at",
          "close_by",
          "closed",
          "last_look",
          "soft_until",
          "clamps_off",
          "recoat_from",
          "recoat_to",
          "covered_at",
          "full_cure",
          "estimated_use",
          "estimated_unit",
          "unknown");

  private static final DateTimeFormatter ISO =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

  private final ZoneId zone;
  private final ShopTalk talk;
  private final Instant now;

  private JointsSheet(Bonds bonds) {
    this.zone = bonds.project().zone();
    this.talk = new ShopTalk(bonds.project().units());
    this.now = bonds.now();
  }

  public static Sheet of(Bonds bonds, Which which) {
    JointsSheet sheet = new JointsSheet(bonds);
    return Sheet.of(COLUMNS, bonds.listed(which).stream().map(sheet::row).toList());
  }

  private List<Cell> row(Bond bond) {
    Optional<GluedJoint> joint =
        Optional.of(bond).filter(GluedJoint.class::isInstance).map(GluedJoint.class::cast);
    Optional<LaidCoat> coat =
        Optional.of(bond).filter(LaidCoat.class::isInstance).map(LaidCoat.class::cast);
    Made made = bond.made();
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.Words.of(bond.kind()));
    cells.add(Cell.Words.of(made.name()));
    cells.add(Cell.Words.of(made.entry()));
    cells.add(words(made.adhesive().map(Adhesive::name)));
    cells.add(words(made.warm().warmth().map(talk::warmth)));
    cells.add(Cell.Words.of(made.warm().from().word()));
    cells.add(Cell.Words.of(bond.state(now).word()));
    cells.add(time(joint.map(GluedJoint::spreadAt).orElseGet(bond::begun)));
    cells.add(time(joint.flatMap(GluedJoint::clampedAt)));
    cells.add(figure(joint.map(GluedJoint::closeBy)));
    cells.add(
        words(
            joint.flatMap(j -> j.late().value()).map(late -> late.isZero() ? "in time" : "late")));
    cells.add(figure(joint.map(GluedJoint::lastLook)));
    cells.add(figure(joint.map(GluedJoint::softUntil)));
    cells.add(figure(joint.map(GluedJoint::clampsOff)));
    cells.add(figure(coat.map(LaidCoat::recoatFrom)));
    cells.add(figure(coat.map(LaidCoat::recoatTo)));
    cells.add(time(coat.flatMap(LaidCoat::coveredAt)));
    cells.add(figure(Optional.of(bond.fullCure())));
    cells.add(
        made.mixed()
            .map(EstimatedUse::amount)
            .<Cell>map(amount -> new Cell.Measured(amount, talk.reckoned(amount)))
            .orElseGet(Cell.Blank::new));
    cells.add(words(made.mixed().map(use -> use.amount().unit().name())));
    cells.add(words(unknown(joint, coat, bond)));
    return cells;
  }

  private static Optional<String> unknown(
      Optional<GluedJoint> joint, Optional<LaidCoat> coat, Bond bond) {
    Stream<Figure<?>> figures =
        Stream.<Stream<Figure<?>>>of(
                joint.stream()
                    .flatMap(j -> Stream.of(j.late(), j.closeBy(), j.softUntil(), j.clampsOff())),
                coat.stream().flatMap(c -> Stream.of(c.recoatFrom(), c.recoatTo())),
                Stream.of(bond.fullCure()))
            .flatMap(some -> some);
    String why =
        figures
            .map(Figure::why)
            .filter(reason -> !reason.isEmpty())
            .distinct()
            .collect(Collectors.joining("; "));
    return Optional.of(why).filter(reasons -> !reasons.isEmpty());
  }

  private Cell figure(Optional<Figure<Instant>> figure) {
    return time(figure.flatMap(Figure::value));
  }

  private Cell time(Optional<Instant> at) {
    return words(at.map(moment -> ISO.format(moment.atZone(zone))));
  }

  private static Cell words(Optional<String> text) {
    return text.<Cell>map(Cell.Words::of).orElseGet(Cell.Blank::new);
  }
}
