package ribband.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.cli.NeedOptions.Need;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.measure.ShopTalk;
import ribband.measure.Span;
import ribband.measure.Units;
import ribband.measure.Unreadable;
import ribband.measure.Warmth;
import ribband.problem.Nearest;
import ribband.shop.Adhesive;
import ribband.shop.MixPlan;

/** Tells how much to mix, and how long it lasts. */
@Command(
    name = "mix",
    header = "Tell how much to mix, in which parts, and how long there is",
    description = {
      "For an area, cloth, a fillet or an amount. The adhesive is one of project.yaml, whose figures"
          + " the options stand in for; without --adhesive the options alone describe it. No"
          + " journal is needed for that.",
      "",
      "The maker's data sheet and local rules govern."
    },
    footer = {
      "  ribband mix --adhesive epoxy --area \"2 in x 8 ft\" --pieces 2 --temperature 61F",
      "  ribband mix --fillet 1/2in --length 8ft --ratio \"2 to 1\"",
      "  ribband mix --cloth \"6 oz per yd2\" --area \"3 ft x 12 ft\" --adhesive epoxy",
      "  ribband mix --amount 200ml --ratio \"5 to 1\" --pot-life 20min --takes 45min"
    })
final class MixCommand implements Callable<Integer> {
  private final Surroundings around;

  @Mixin private JournalArgument journal;

  @Option(
      names = "--adhesive",
      paramLabel = "NAME",
      order = 1,
      description = "one of project.yaml; not needed where there is one alone")
  private String adhesive;

  @Mixin private NeedOptions needs;

  @Option(
      names = "--temperature",
      paramLabel = "DEGREES",
      order = 10,
      description = "of the wood: 61F, 16C, \"77 F for 4 h then 59 F\"")
  private String temperature;

  @Option(
      names = "--takes",
      paramLabel = "TIME",
      order = 11,
      description = "to spread all of it; if not said, 2 minutes a fluid ounce")
  private String takes;

  @Option(
      names = "--step",
      paramLabel = "AMOUNT",
      order = 12,
      description = "the finest that you can measure: 1ml, 5g; else 1/8 fl oz, 0.1 oz, 1 ml, 1 g")
  private String step;

  @Mixin private AdhesiveOptions sheet;

  @Option(
      names = "--units",
      paramLabel = "WHICH",
      order = 70,
      description = "us or metric; if not said, the journal's, else those of the need")
  private String units;

  @Mixin private FormatOption format;
  @Mixin private Common options;

  MixCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException {
    Format how = format.read();
    Wants wants = new Wants();
    Optional<OpenJournal> project = Workbench.project(around, journal, options);
    Units shown = Workbench.units(wants, units, project, needs.question());
    Adhesive used = sheet.over(named(project, wants), wants);
    Optional<Need> need = needs.read(wants, used, new ShopTalk(shown));
    Optional<Warmth> warmth = wants.read("--temperature", temperature, Warmth::read);
    Optional<Span> time = wants.read("--takes", takes, Span::read);
    Optional<Quantity> finest = wants.read("--step", step, Wants::volumeOrWeight);
    wants.settle();
    MixPlan.Steps usual = MixPlan.Steps.usual(shown);
    MixPlan plan =
        MixPlan.of(
            used, need.orElseThrow().mixed(), warmth, time, finest.map(usual::with).orElse(usual));
    if (how == Format.TABLE) {
      new MixTable(plan, used, warmth, shown, around.out()).tell(need.get(), time.isPresent());
    } else {
      how.print(MixData.of(plan, used, shown), around.out());
    }
    return ExitCode.DONE;
  }

  /** One that the journal lists; of one that the options alone describe nothing else is known. */
  private Adhesive named(Optional<OpenJournal> project, Wants wants) {
    List<Adhesive> listed =
        project.map(p -> List.copyOf(p.journal().project().adhesives().values())).orElse(List.of());
    if (adhesive != null) {
      if (project.isPresent()) {
        return wants
            .read("--adhesive", adhesive, name -> one(name, listed))
            .orElse(AdhesiveOptions.UNKNOWN);
      }
      if (sheet.isAny()) {
        return AdhesiveOptions.unknown(adhesive);
      }
      wants.refuse(
          "--adhesive names one of a journal, and no project.yaml lies here or in a folder above;"
              + " name the journal's folder, or describe the adhesive by --ratio, --spread and the"
              + " others");
    }
    if (adhesive == null && !sheet.isAny() && listed.size() > 1) {
      wants.refuse(
          "nothing says which adhesive; name one with --adhesive: "
              + String.join(", ", listed.stream().map(Adhesive::name).toList()));
    }
    boolean oneAlone = adhesive == null && !sheet.isAny() && listed.size() == 1;
    return oneAlone ? listed.get(0) : AdhesiveOptions.UNKNOWN;
  }

  private static Adhesive one(String typed, List<Adhesive> listed) throws Unreadable {
    return listed.stream()
        .filter(a -> Name.fold(a.name()).equals(Name.fold(typed)))
        .findFirst()
        .orElseThrow(
            () ->
                new Unreadable(
                    "is not among the adhesives of project.yaml",
                    Nearest.hint(
                        typed,
                        listed.stream().map(Adhesive::name).toList(),
                        "list it there, none are so far")));
  }
}
