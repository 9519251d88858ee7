package ribband.stock;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribband.journal.Coat;
import ribband.journal.Entry;
import ribband.journal.Joint;
import ribband.journal.PieceKind;
import ribband.journal.PieceWork;
import ribband.journal.Project;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.measure.Unit;
import ribband.shop.Adhesive;

/**
 * What an entry made with a material.
 *
 * @param pieces by kind, those taken back not counted
 * @param area glued or coated, as far as it is written
 * @param measured the one adhesive that all of the area was done with, where nothing else of the
 *     material went anywhere else; empty where the area tells nothing about the amount used
 */
record GlueWork(
    int joints,
    int coats,
    Map<String, Integer> pieces,
    Optional<Quantity> area,
    Optional<String> measured) {

  private static final Unit AREA = Unit.of("in2");

  /**
   * Looks at one entry.
   *
   * @param material its folded name
   */
  static GlueWork of(Entry entry, String material, Project project) {
    return new Look(entry, material, project).work();
  }

  /** The folded name of the material that an adhesive is mixed from. */
  static String materialOf(Adhesive adhesive) {
    return Name.fold(adhesive.material().orElse(adhesive.name()));
  }

  private static final class Look {
    private final Entry entry;
    private final String material;
    private final Project project;
    private final Set<String> adhesives = new LinkedHashSet<>();
    private Quantity area = Quantity.none(AREA);
    private boolean telling = true;
    private int joints;
    private int coats;

    Look(Entry entry, String material, Project project) {
      this.entry = entry;
      this.material = material;
      this.project = project;
    }

    GlueWork work() {
      for (Joint joint : entry.joints()) {
        joints += isOfIt(joint.adhesive(), joint.area()) ? 1 : 0;
      }
      for (Coat coat : entry.coats()) {
        coats += isOfIt(coat.adhesive(), coat.area()) ? 1 : 0;
      }
      boolean fromPieces = joints + coats == 0;
      Map<String, Integer> pieces = pieces(fromPieces);
      boolean measured = telling && adhesives.size() == 1 && !area.isZero();
      return new GlueWork(
          joints,
          coats,
          pieces,
          area.isZero() ? Optional.empty() : Optional.of(area),
          measured ? adhesives.stream().findFirst() : Optional.empty());
    }

    /** What was glued with something unsaid may have taken some of the material too. */
    private boolean isOfIt(Optional<String> named, Optional<Quantity> over) {
      if (named.isEmpty()) {
        telling = false;
      }
      Optional<Adhesive> adhesive = adhesive(named).filter(a -> materialOf(a).equals(material));
      adhesive.ifPresent(
          a -> {
            adhesives.add(Name.fold(a.name()));
            telling = telling && over.isPresent();
            over.ifPresent(more -> area = area.plus(more));
          });
      return adhesive.isPresent();
    }

    private Map<String, Integer> pieces(boolean fromPieces) {
      Map<String, Integer> pieces = new LinkedHashMap<>();
      boolean glue =
          project.adhesives().values().stream().anyMatch(a -> materialOf(a).equals(material));
      for (PieceWork made : entry.pieces()) {
        PieceKind kind = project.pieceKind(made.kind()).orElseThrow();
        Optional<Adhesive> adhesive =
            adhesive(kind.adhesive()).filter(a -> materialOf(a).equals(material));
        if (made.count() > 0 && (adhesive.isPresent() || !glue)) {
          pieces.merge(kind.name(), made.count(), Integer::sum);
        }
        if (fromPieces && made.count() > 0) {
          adhesive.ifPresent(a -> glued(a, kind.glueArea().map(each -> each.times(made.count()))));
        }
      }
      return pieces;
    }

    private void glued(Adhesive adhesive, Optional<Quantity> over) {
      adhesives.add(Name.fold(adhesive.name()));
      telling = telling && over.isPresent();
      over.ifPresent(more -> area = area.plus(more));
    }

    private Optional<Adhesive> adhesive(Optional<String> named) {
      return named.map(name -> project.adhesives().get(Name.fold(name)));
    }
  }
}
