package ribband.journal;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ribband.journal.Node.Mapping;
import ribband.journal.SiteSettings.Address;
import ribband.journal.SiteSettings.At;
import ribband.journal.SiteSettings.MoneyShown;
import ribband.journal.SiteSettings.Nowhere;
import ribband.journal.SiteSettings.Robots;
import ribband.journal.SiteSettings.Unsaid;
import ribband.measure.Currency;
import ribband.measure.Dates;
import ribband.measure.Money;
import ribband.measure.Reading;
import ribband.measure.Units;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;
import ribband.shop.Adhesive;

/** Reads {@code project.yaml}: the project, its site; hands the plan and the catalogue on. */
final class ProjectReader {
  /** Keys that entries lean on. */
  private static final List<String> LEANED_ON =
      List.of("currency", "phases", "adhesives", "pieces");

  /** spec: what a builder writes who wants no address, and no search engines. */
  private static final String NONE = "none";

  private final JournalFolder folder;
  private final Problems problems;
  private final Fields fields;
  private final Set<String> unsure = new TreeSet<>();

  private ProjectReader(JournalFolder folder, Fields fields, Problems problems) {
    this.folder = folder;
    this.fields = fields;
    this.problems = problems;
  }

  /** Reads the project. */
  static Known read(JournalFolder folder, Source source, Problems problems) {
    Optional<Mapping> mapping = YamlTree.read(source.text(), source.file(), 0, problems);
    if (mapping.isEmpty()) {
      return unread(folder);
    }
    Lost.comments(source, mapping.get(), problems);
    return new ProjectReader(folder, new Fields(mapping.get(), problems), problems).read();
  }

  /** What stands in for a project that cannot be read, to go on with the entries. */
  static Known unread(JournalFolder folder) {
    Mapping nothing = new Mapping(List.of(), Place.of(JournalFolder.PROJECT));
    Problems none = new Problems();
    Project bare = new ProjectReader(folder, new Fields(nothing, none), none).read().project();
    return new Known(bare, Set.copyOf(LEANED_ON));
  }

  private Known read() {
    String name = fields.text("name").orElse("The build");
    Optional<String> what = fields.text("what");
    Currency currency = currency();
    Units units = fields.value("units", ProjectReader::units).orElse(Units.US);
    ZoneId zone = fields.value("time zone", ProjectReader::zone).orElse(ZoneOffset.UTC);
    Optional<LocalDate> started = fields.value("started", Dates::readDay);
    SiteSettings site = site();
    Reading<Money> amounts = Known.readable(currency)::read;
    PlanReader plan = new PlanReader(fields, amounts, problems);
    List<Phase> phases = plan.phases();
    doubtIfFewer("phases", phases.size());
    Listed phaseNames = Known.phases(phases, unsure);
    Carried carried = plan.carried(phaseNames);
    CatalogueReader catalogue = new CatalogueReader(fields, amounts, phaseNames, problems);
    Map<String, Material> materials = catalogue.materials();
    Map<String, Adhesive> adhesives = catalogue.adhesives(materials);
    doubtIfFewer("adhesives", adhesives.size());
    Project project =
        new Project(
            name,
            what,
            currency,
            units,
            zone,
            started,
            site,
            phases,
            carried,
            materials,
            adhesives,
            pieces(catalogue, Known.adhesives(adhesives.values(), unsure)),
            catalogue.clamps(),
            catalogue.away(),
            catalogue.shopTemperatures());
    long told = problems.errors();
    fields.close();
    if (problems.errors() > told) {
      // A key that is not there may be the one that was mistyped.
      LEANED_ON.stream().filter(key -> !fields.has(key)).forEach(unsure::add);
    }
    return new Known(project, unsure);
  }

  private Currency currency() {
    Optional<Currency> named = fields.value("currency", Currency::readCode);
    if (named.isEmpty() && fields.has("currency")) {
      unsure.add("currency");
    }
    return named.orElse(Currency.NONE);
  }

  /** A name that was dropped may be the one that an entry writes. */
  private void doubtIfFewer(String key, int read) {
    if (read < fields.count(key)) {
      unsure.add(key);
    }
  }

  /** Entries lean on the totals and sides of pieces too, so no slip in them may be left. */
  private Map<String, PieceKind> pieces(CatalogueReader catalogue, Listed adhesives) {
    long told = problems.errors();
    Map<String, PieceKind> pieces = catalogue.pieces(adhesives);
    if (problems.errors() > told) {
      unsure.add("pieces");
    }
    return pieces;
  }

  private static Units units(String text) throws Unreadable {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "us" -> Units.US;
      case "metric" -> Units.METRIC;
      default -> throw new Unreadable("is no set of units", "write us or metric");
    };
  }

  private static ZoneId zone(String text) throws Unreadable {
    try {
      return ZoneId.of(text);
    } catch (DateTimeException e) {
      throw new Unreadable(
          "is no time zone",
          Nearest.to(text, new TreeSet<>(ZoneId.getAvailableZoneIds()))
              .map(name -> "did you mean " + OneLine.quote(name) + "?")
              .orElse("write one as Area/City of the tz database, or UTC"));
    }
  }

  private SiteSettings site() {
    Unsaid unsaid =
        new Unsaid(
            fields.has("site") ? fields.placeOf("site") : new Place(JournalFolder.PROJECT, 1, 1));
    return fields
        .mapping("site")
        .map(site -> site(site, unsaid))
        .orElse(new SiteSettings(unsaid, MoneyShown.SHOWN, Optional.empty(), Robots.WELCOME));
  }

  private SiteSettings site(Fields site, Unsaid unsaid) {
    SiteSettings read =
        new SiteSettings(
            site.value("address", ProjectReader::address).orElse(unsaid),
            site.value("show money", Readings::trueOrFalse).orElse(true)
                ? MoneyShown.SHOWN
                : MoneyShown.HIDDEN,
            site.value(
                "about", name -> FileNames.file(folder, JournalFolder.PROJECT, name, "file")),
            site.value("robots", ProjectReader::robots).orElse(Robots.WELCOME));
    site.close();
    return read;
  }

  private static Robots robots(String text) throws Unreadable {
    if (NONE.equalsIgnoreCase(text)) {
      return Robots.NONE;
    }
    throw new Unreadable(
        "says nothing to search engines",
        "write none to ask them to stay away, or leave the key out");
  }

  private static Address address(String text) throws Unreadable {
    return NONE.equalsIgnoreCase(text) ? new Nowhere() : new At(WebAddress.read(text));
  }
}
