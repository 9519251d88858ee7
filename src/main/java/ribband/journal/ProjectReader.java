package ribband.journal;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ribband.journal.Node.Mapping;
import ribband.journal.SiteSettings.MoneyShown;
import ribband.measure.Currency;
import ribband.measure.Dates;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Name;
import ribband.measure.Reading;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Reads {@code project.yaml}: what is built, the plan, the site; hands the catalogue on. */
final class ProjectReader {
  /** Keys that entries lean on. */
  private static final List<String> LEANED_ON =
      List.of("currency", "phases", "adhesives", "pieces");

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
    List<Phase> phases = phases(amounts);
    doubtIfFewer("phases", phases.size());
    Listed phaseNames = Known.phases(phases, unsure);
    Carried carried = carried(amounts, phaseNames);
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
    return fields
        .mapping("site")
        .map(
            site -> {
              SiteSettings read =
                  new SiteSettings(
                      site.value("address", ProjectReader::address),
                      site.value("show money", Readings::trueOrFalse).orElse(true)
                          ? MoneyShown.SHOWN
                          : MoneyShown.HIDDEN,
                      site.value(
                          "about",
                          name -> FileNames.file(folder, JournalFolder.PROJECT, name, "file")));
              site.close();
              return read;
            })
        .orElse(new SiteSettings(Optional.empty(), MoneyShown.SHOWN, Optional.empty()));
  }

  private static URI address(String text) throws Unreadable {
    try {
      URI uri = new URI(text.endsWith("/") ? text : text + "/");
      boolean web =
          "http".equalsIgnoreCase(uri.getScheme()) || "https".equalsIgnoreCase(uri.getScheme());
      if (web
          && uri.getHost() != null
          && uri.getRawQuery() == null
          && uri.getRawFragment() == null) {
        return uri;
      }
    } catch (URISyntaxException e) {
      // told below, as any other address that is none
    }
    throw new Unreadable(
        "is no address of a site", "write it in full, as https://example.org/boat/");
  }

  private List<Phase> phases(Reading<Money> amounts) {
    List<Phase> phases = new ArrayList<>();
    Map<String, Place> seen = new LinkedHashMap<>();
    for (Node item : fields.items("phases")) {
      Optional<Fields> keys =
          item instanceof Mapping mapping
              ? Optional.of(new Fields(mapping, problems))
              : Optional.empty();
      Optional<String> id =
          keys.isPresent()
              ? keys.get().value("id", Readings::id)
              : Values.read("phase", item, Readings::id, problems);
      Optional<String> title = keys.flatMap(k -> k.text("title"));
      Optional<Hours> hours = keys.flatMap(k -> k.value("hours", Hours::read));
      Optional<Money> cost = keys.flatMap(k -> k.value("cost", amounts));
      keys.ifPresent(Fields::close);
      if (keys.isPresent() && !keys.get().has("id")) {
        problems.error(
            item.place(), "a phase has no id; write it as - {id: planking, title: Planking}");
      }
      Place place = keys.map(k -> k.placeOfValue("id")).orElse(item.place());
      id.filter(name -> isNew(name, place, seen))
          .ifPresent(
              name ->
                  phases.add(
                      new Phase(name, title.orElse(Phase.named(name).title()), hours, cost)));
    }
    return phases;
  }

  private boolean isNew(String id, Place place, Map<String, Place> seen) {
    if (Name.fold(id).equals(Phase.UNSORTED.id())) {
      problems.error(
          place,
          "phase \"unsorted\" is where hours without a phase are counted; give yours another id");
      return false;
    }
    Place first = seen.putIfAbsent(Name.fold(id), place);
    if (first != null) {
      problems.error(
          place,
          "phase "
              + OneLine.quote(id)
              + " is listed twice, first at line "
              + first.line()
              + "; keep one");
    }
    return first == null;
  }

  private Carried carried(Reading<Money> amounts, Listed phaseNames) {
    return fields
        .mapping("carried")
        .map(
            carried -> {
              Carried read =
                  new Carried(
                      carried.value("through", Dates::readDay),
                      carried.value("sessions", Readings.whole(0, 99_999)).orElse(0),
                      byPhase(carried, "hours", Hours::read, phaseNames),
                      byPhase(carried, "cost", amounts, phaseNames));
              carried.close();
              return read;
            })
        .orElse(Carried.NOTHING);
  }

  private <T> Map<String, T> byPhase(
      Fields carried, String key, Reading<T> reading, Listed phaseNames) {
    Map<String, T> values = new LinkedHashMap<>();
    carried
        .find(key)
        .ifPresent(
            node -> {
              if (node instanceof Mapping mapping) {
                values.putAll(PhaseMap.read(key, mapping, reading, phaseNames, problems));
              } else {
                Values.read(key, node, reading, problems)
                    .ifPresent(value -> values.put(Phase.UNSORTED.id(), value));
                problems.warning(
                    node.place(),
                    "carried "
                        + key
                        + " names no phase and counts under unsorted; write it by"
                        + " phase, as {planking: 44.5}");
              }
            });
    return values;
  }
}
