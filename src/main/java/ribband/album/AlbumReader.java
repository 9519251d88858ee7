package ribband.album;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import ribband.album.Shot.Where;
import ribband.journal.Entry;
import ribband.journal.FileNames;
import ribband.journal.Journal;
import ribband.journal.Photo;
import ribband.measure.Unreadable;
import ribband.memory.Memory;
import ribband.photo.PictureFacts;
import ribband.photo.UnfitPicture;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problem;
import ribband.problem.Problems;
import ribband.prose.Body;
import ribband.prose.Crew;
import ribband.prose.Manuscript;
import ribband.prose.Mention;
import ribband.prose.Prose;

/** Parses the words and looks at the pictures of every entry, in parallel. */
public final class AlbumReader {
  private static final Comparator<Listed> BY_TIME =
      Comparator.comparingInt((Listed listed) -> listed.photo().batch())
          .thenComparing(Listed::taken)
          .thenComparing(listed -> listed.photo().file());

  private final Journal journal;
  private final PictureLooker looker;
  private final EntryLinks links;
  private final Showing showing;
  private final Prose prose = new Prose();
  private final TextReader texts;

  private AlbumReader(Journal journal, Showing showing, PictureMemory pictures, Memory texts) {
    this.journal = journal;
    this.showing = showing;
    this.looker = new PictureLooker(journal.folder(), pictures);
    this.texts = new TextReader(prose, texts);
    this.links = new EntryLinks(journal, prose);
  }

  /**
   * Reads the words and pictures of a journal.
   *
   * @param showing where the texts will stand
   * @param texts remembered from earlier runs of this build of the tool
   * @param problems gets what is wrong with them
   */
  public static Album read(
      Journal journal, Showing showing, PictureMemory pictures, Memory texts, Problems problems) {
    return new AlbumReader(journal, showing, pictures, texts).read(problems);
  }

  private record OneLeaf(Leaf leaf, List<Problem> problems) {}

  private Album read(Problems problems) {
    List<OneLeaf> leaves = Crew.work(journal.entries(), this::leaf);
    leaves.forEach(leaf -> problems.addAll(leaf.problems()));
    Optional<String> about = journal.project().site().about().map(file -> about(file, problems));
    return new Album(journal, leaves.stream().map(OneLeaf::leaf).toList(), about);
  }

  private String about(String file, Problems problems) {
    try {
      String text = Files.readString(journal.folder().path(file), StandardCharsets.UTF_8);
      Manuscript words = prose.read(new Body(file, 1, text), problems);
      for (Mention mention : words.mentions()) {
        if (mention.kind() == Mention.Kind.PICTURE) {
          problems.warning(
              mention.place(),
              "picture "
                  + OneLine.quote(mention.path())
                  + " is left out, the words about the boat have none; show it in an entry");
        } else {
          links.check(file, mention, problems);
        }
      }
      return showing
          .about(file)
          .map(around -> prose.html(words, links.withHeadings(file, around)))
          .orElse("");
    } catch (CharacterCodingException e) {
      problems.error(Place.of(file), "is not UTF-8; save it as UTF-8");
      return "";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private OneLeaf leaf(Entry entry) {
    Problems problems = new Problems();
    TextReader.Read words = texts.read(entry, problems);
    Map<String, Shot> shots = new LinkedHashMap<>();
    listed(entry, problems).forEach(shot -> shots.put(shot.file(), shot));
    for (Mention mention : words.text().mentions()) {
      if (mention.kind() == Mention.Kind.PICTURE) {
        inText(entry, mention, problems)
            .ifPresent(shot -> shots.merge(shot.file(), shot, AlbumReader::asInText));
      } else {
        links.check(entry.file(), mention, problems);
      }
    }
    List<Shot> shown = List.copyOf(shots.values());
    Supplier<String> html =
        showing
            .of(entry, shown)
            .map(around -> texts.show(words, links.withHeadings(entry.file(), around)))
            .orElse(() -> "");
    Leaf leaf = new Leaf(entry, words.text().opening(), words.text().words(), html, shown);
    return new OneLeaf(leaf, problems.sorted());
  }

  private record Listed(Photo photo, PictureFacts facts) {
    LocalDateTime taken() {
      return facts.taken().orElse(LocalDateTime.MAX);
    }

    Shot shot() {
      return new Shot(
          photo.file(),
          facts,
          photo.caption(),
          photo.alt(),
          photo.cover(),
          Where.LISTED,
          photo.place());
    }
  }

  private List<Shot> listed(Entry entry, Problems problems) {
    looker.lookAhead(entry.photos().stream().map(Photo::file).toList());
    List<Listed> listed = new ArrayList<>();
    for (Photo photo : entry.photos()) {
      look(photo.file(), photo.file(), photo.place(), problems)
          .ifPresent(facts -> listed.add(new Listed(photo, facts)));
    }
    return listed.stream().sorted(BY_TIME).map(Listed::shot).toList();
  }

  private Optional<PictureFacts> look(String file, String named, Place place, Problems problems) {
    try {
      PictureFacts facts = looker.facts(file);
      if (facts.frames() > 1) {
        problems.warning(
            place,
            "picture "
                + OneLine.quote(named)
                + " has "
                + facts.frames()
                + " frames, and only the first is shown; save others as pictures of their own");
      }
      return Optional.of(facts);
    } catch (UnfitPicture e) {
      problems.error(place, told(named, e));
      return Optional.empty();
    }
  }

  /** How a picture that cannot be shown is told. */
  static String told(String named, UnfitPicture unfit) {
    return "picture " + OneLine.quote(named) + " " + unfit.getMessage();
  }

  private Optional<Shot> inText(Entry entry, Mention mention, Problems problems) {
    try {
      String file = FileNames.picture(journal.folder(), entry.file(), mention.path());
      Optional<String> words =
          mention.words().isBlank() ? Optional.empty() : Optional.of(mention.words());
      return look(file, mention.path(), mention.place(), problems)
          .map(facts -> new Shot(file, facts, words, words, false, Where.IN_TEXT, mention.place()));
    } catch (Unreadable e) {
      problems.error(
          mention.place(),
          "picture " + OneLine.quote(mention.path()) + " " + e.wrong() + "; " + e.cure());
      return Optional.empty();
    }
  }

  private static Shot asInText(Shot listed, Shot inText) {
    return new Shot(
        listed.file(),
        listed.facts(),
        listed.caption().or(inText::caption),
        listed.alt().or(inText::alt),
        listed.cover(),
        Where.IN_TEXT,
        listed.place());
  }
}
