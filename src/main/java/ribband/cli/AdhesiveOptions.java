package ribband.cli;

import java.util.Optional;
import picocli.CommandLine.Option;
import ribband.measure.Mix;
import ribband.measure.Proportion;
import ribband.measure.Span;
import ribband.measure.Spread;
import ribband.measure.Temperature;
import ribband.measure.Unreadable;
import ribband.shop.Adhesive;

/** An adhesive's figures as options: they stand in for those of project.yaml, or for all of it. */
final class AdhesiveOptions {
  private static final String RATIO = "--ratio";

  /** An adhesive of which nothing is known, not even its name. */
  static final Adhesive UNKNOWN = unknown("");

  @Option(
      names = RATIO,
      paramLabel = "RATIO",
      order = 20,
      description = "how it is mixed: \"2 to 1 by volume\", \"100 to 42 by weight\"")
  private String ratio;

  @Option(
      names = "--densities",
      paramLabel = "PAIR",
      order = 21,
      description = "of both parts in g/ml, to weigh them: \"1.15 to 0.97\"")
  private String densities;

  @Option(
      names = "--spread",
      paramLabel = "RATE",
      order = 22,
      description = "how far it goes: \"140 in2 per fl oz\"")
  private String spread;

  @Option(
      names = "--rated-at",
      paramLabel = "DEGREES",
      order = 23,
      description = "the temperature that its times hold for: 72F")
  private String ratedAt;

  @Option(
      names = "--coldest",
      paramLabel = "DEGREES",
      order = 24,
      description = "not used below it")
  private String coldest;

  @Option(
      names = "--pot-life",
      paramLabel = "TIME",
      order = 25,
      description = "in the cup: \"20 min\"")
  private String potLife;

  @Option(
      names = "--open-time",
      paramLabel = "TIME",
      order = 26,
      description = "from spreading to closing the joint")
  private String openTime;

  @Option(
      names = "--soft-for",
      paramLabel = "TIME",
      order = 27,
      description = "how long the joint can still be moved")
  private String softFor;

  @Option(
      names = "--clamp-time",
      paramLabel = "TIME",
      order = 28,
      description = "in clamps: \"8 h\"")
  private String clampTime;

  /** An adhesive of which only the name is known. */
  static Adhesive unknown(String name) {
    return new Adhesive(
        name,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Whether any of it was typed. */
  boolean isAny() {
    return ratio != null
        || densities != null
        || spread != null
        || ratedAt != null
        || coldest != null
        || potLife != null
        || openTime != null
        || softFor != null
        || clampTime != null;
  }

  /** What is typed wins over what is known. */
  Adhesive over(Adhesive known, Wants wants) {
    return new Adhesive(
        known.name(),
        known.material(),
        wants.read(RATIO, ratio, AdhesiveOptions::mix).or(known::mix),
        wants.read("--densities", densities, Proportion::read).or(known::densities),
        wants.read("--rated-at", ratedAt, Temperature::read).or(known::ratedAt),
        wants.read("--pot-life", potLife, Span::read).or(known::potLife),
        wants.read("--open-time", openTime, Span::read).or(known::openTime),
        wants.read("--soft-for", softFor, Span::read).or(known::softFor),
        wants.read("--clamp-time", clampTime, Span::read).or(known::clampTime),
        known.recoat(),
        known.fullCure(),
        wants.read("--coldest", coldest, Temperature::read).or(known::coldest),
        wants.read("--spread", spread, Spread::read).or(known::spread));
  }

  /** Ratios are by volume where nothing is said: that is how cups and pumps are marked. */
  private static Mix mix(String text) throws Unreadable {
    return text.matches("(?is).*\\bby\\b.*") ? Mix.read(text) : Mix.read(text + " by volume");
  }
}
