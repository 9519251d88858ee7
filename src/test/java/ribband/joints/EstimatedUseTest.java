package ribband.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/** The rule is area over spread; the figures were reckoned by hand. */
class EstimatedUseTest {
  private static final String PROJECT =
      """
      materials:
        resin: {unit: g}
      adhesives:
        epoxy: {spread: 160 in2 per fl oz}
        thick: {material: Epoxy, spread: 80 in2 per fl oz}
        weighed: {material: resin, mix: 1 to 1 by volume, densities: 1.2 to 1.0, spread: 100 cm2 per 10 ml}
        unweighed: {material: resin, spread: 100 cm2 per 10 ml}
        bare: {}
      """;

  @TempDir Path folder;

  private List<EstimatedUse> uses(String keys) throws IOException {
    Journal journal = Journals.read(folder, PROJECT, "2026-03-14", keys);
    Entry entry = journal.entries().get(0);
    return EstimatedUse.of(entry, journal.project());
  }

  private static EstimatedUse use(String material, int number, int parts, String unit) {
    return new EstimatedUse(material, new Quantity(BigFraction.of(number, parts), Unit.of(unit)));
  }

  /** A face of 8 in x 20 in takes a fluid ounce: common practice, no source. */
  @Test
  void jointsAndCoatsOfAMaterialAddUp() throws IOException {
    assertEquals(
        List.of(use("epoxy", 7, 2, "fl oz")),
        uses(
            """
            joints:
              - {name: a, adhesive: epoxy, area: 8 in x 20 in}
              - {name: b, adhesive: thick, area: 80 in2}
            coats:
              - {what: c, adhesive: Epoxy, area: 240 in2}"""));
  }

  @Test
  void aWrittenUseIsNotEstimatedAgain() throws IOException {
    assertEquals(
        List.of(),
        uses(
            """
            materials: {used: {EPOXY: 2 fl oz}}
            joints: [{name: a, adhesive: thick, area: 160 in2}]"""));
    assertEquals(
        List.of(use("epoxy", 1, 1, "fl oz")),
        uses(
            """
            materials: {used: {resin: 2 g}}
            joints: [{name: a, adhesive: epoxy, area: 160 in2}]"""));
  }

  @Test
  void whatIsNotKnownIsNotEstimated() throws IOException {
    assertEquals(
        List.of(),
        uses(
            """
            joints:
              - {name: no area, adhesive: epoxy}
              - {name: no spread, adhesive: bare, area: 160 in2}
              - {name: no adhesive, area: 160 in2}"""));
  }

  /** 1:1 by volume of 1.2 and 1.0 g/ml weighs 1.1 g/ml; 100 cm2 take 10 ml. */
  @Test
  void aMaterialThatIsWeighedIsEstimatedByWeightWhereDensitiesAreKnown() throws IOException {
    assertEquals(
        List.of(use("resin", 22, 1, "g"), use("resin", 5, 1, "ml")),
        uses(
            """
            joints:
              - {name: a, adhesive: weighed, area: 200 cm2}
              - {name: b, adhesive: unweighed, area: 50 cm2}"""));
  }
}
