package ribband.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Coat;
import ribband.journal.Entry;
import ribband.journal.Joint;
import ribband.journal.Material;
import ribband.journal.Project;
import ribband.measure.Dimension;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.shop.Adhesive;
import ribband.shop.Spreading;
import ribband.shop.TwoParts;

/**
 * A mixed amount that nobody wrote down, reckoned from what was glued or coated.
 *
 * <p>spec: where an area is given and the entry writes no use of the material, the amount follows
 * from the adhesive's spread, without waste.
 *
 * @param material as the adhesive names it, else the adhesive's own name
 * @param amount exact; in the spread's unit, or in ml or g where {@code project.yaml} counts the
 *     material by the other of volume and weight and densities are known
 */
public record EstimatedUse(String material, Quantity amount) {

  /** The estimates of an entry, one for each material; one more where units do not go together. */
  public static List<EstimatedUse> of(Entry entry, Project project) {
    List<EstimatedUse> each = new ArrayList<>();
    entry.joints().forEach(joint -> of(joint, entry, project).ifPresent(each::add));
    entry.coats().forEach(coat -> of(coat, entry, project).ifPresent(each::add));
    Map<String, Map<Dimension, EstimatedUse>> sums = new LinkedHashMap<>();
    for (EstimatedUse one : each) {
      sums.computeIfAbsent(Name.fold(one.material), name -> new LinkedHashMap<>())
          .merge(
              one.amount.unit().dimension(),
              one,
              (a, b) -> new EstimatedUse(a.material, a.amount.plus(b.amount)));
    }
    return sums.values().stream().flatMap(sum -> sum.values().stream()).toList();
  }

  /** The estimate of one joint of an entry. */
  public static Optional<EstimatedUse> of(Joint joint, Entry entry, Project project) {
    return of(joint.adhesive(), joint.area(), entry, project);
  }

  /** The estimate of one coat of an entry. */
  public static Optional<EstimatedUse> of(Coat coat, Entry entry, Project project) {
    return of(coat.adhesive(), coat.area(), entry, project);
  }

  private static Optional<EstimatedUse> of(
      Optional<String> adhesive, Optional<Quantity> area, Entry entry, Project project) {
    return adhesive
        .map(name -> project.adhesives().get(Name.fold(name)))
        .filter(known -> !isWritten(known, entry))
        .flatMap(known -> area.flatMap(glued -> of(known, glued, project)));
  }

  private static boolean isWritten(Adhesive adhesive, Entry entry) {
    String material = Name.fold(material(adhesive));
    return entry.used().stream().anyMatch(used -> Name.fold(used.material()).equals(material));
  }

  private static Optional<EstimatedUse> of(Adhesive adhesive, Quantity area, Project project) {
    String material = material(adhesive);
    Optional<Dimension> counted =
        Optional.ofNullable(project.materials().get(Name.fold(material)))
            .flatMap(Material::unit)
            .map(unit -> unit.dimension());
    return adhesive
        .spread()
        .map(spread -> Spreading.amount(area, spread))
        .map(
            mixed ->
                counted.flatMap(by -> TwoParts.of(adhesive).measuredBy(by, mixed)).orElse(mixed))
        .map(mixed -> new EstimatedUse(material, mixed));
  }

  private static String material(Adhesive adhesive) {
    return adhesive.material().orElse(adhesive.name());
  }
}
