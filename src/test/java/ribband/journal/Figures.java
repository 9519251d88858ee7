package ribband.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ribband.measure.Currency;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Units;

/** An entry in lines that a builder can read, for comparing whole. */
final class Figures {
  private Figures() {}

  static List<String> of(Entry entry, Project project) {
    List<String> said = new ArrayList<>();
    entry.hours().forEach((phase, hours) -> said.add(phase + " " + hours.decimal() + " h"));
    entry.outlays().forEach(outlay -> said.add(outlay(outlay, project.currency())));
    entry.used().forEach(amount -> said.add("used " + amount(amount)));
    entry.left().forEach(amount -> said.add("left " + amount(amount)));
    entry.pieces().forEach(work -> said.add(pieces(work)));
    entry.complete().forEach((phase, share) -> said.add(phase + " at " + Saying.percent(share)));
    entry.joints().forEach(joint -> said.add(joint(joint)));
    entry.coats().forEach(coat -> said.add(coat(coat)));
    entry.todo().forEach(job -> said.add(job(job)));
    entry.done().forEach(mark -> said.add("done " + mark.name()));
    entry.lessons().forEach(lesson -> said.add("lesson " + lesson.replace("\n", "/")));
    entry.mark().ifPresent(mark -> said.add("mark " + mark));
    entry.photos().forEach(photo -> said.add(photo(photo)));
    if (!entry.isPublic()) {
      said.add("private");
    }
    return said;
  }

  private static String outlay(Outlay outlay, Currency currency) {
    String bought =
        outlay
            .purchase()
            .map(
                p ->
                    " for "
                        + p.amount()
                            .map(a -> a.count() + " of " + Saying.quantity(a.pack()) + " ")
                            .orElse("")
                        + p.what()
                        + told(" from ", p.from())
                        + told(", receipt ", p.receipt())
                        + told(", arrived ", p.arrived()))
            .orElse("");
    return outlay.phase() + " " + outlay.amount().decimal(currency) + bought;
  }

  private static String amount(Amount amount) {
    return Saying.quantity(amount.quantity()) + " " + amount.material();
  }

  private static String pieces(PieceWork work) {
    String numbers = work.numbers().isEmpty() ? "" : " " + work.numbers();
    return work.count() + " " + work.kind() + told(" ", work.side()) + numbers;
  }

  private static String joint(Joint joint) {
    return "joint "
        + joint.name()
        + told(", ", joint.adhesive())
        + told(", spread ", joint.spreadAt())
        + told(", clamped ", joint.clampedAt())
        + told(", ", joint.temperature().map(new ShopTalk(Units.US)::warmth))
        + told(", ", joint.area().map(Saying::quantity));
  }

  private static String coat(Coat coat) {
    return "coat "
        + coat.what()
        + told(", ", coat.adhesive())
        + told(", at ", coat.at())
        + told(", ", coat.temperature().map(new ShopTalk(Units.US)::warmth))
        + told(", ", coat.area().map(Saying::quantity));
  }

  private static String job(Job job) {
    return "todo "
        + job.id()
        + ": "
        + job.what()
        + (job.after().isEmpty() ? "" : ", after " + job.after().stream().map(Mark::name).toList())
        + told(", ", job.phase())
        + told(", ", job.hours().map(hours -> hours.decimal() + " h"));
  }

  private static String photo(Photo photo) {
    return Stream.of(
            "picture " + photo.file(),
            told("caption ", photo.caption()),
            told("alt ", photo.alt()),
            photo.cover() ? "cover" : "")
        .filter(part -> !part.isEmpty())
        .reduce((a, b) -> a + ", " + b)
        .orElseThrow();
  }

  private static String told(String before, Optional<?> value) {
    return value.map(v -> before + v).orElse("");
  }
}
