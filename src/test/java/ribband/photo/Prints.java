package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Prints a picture the whole way, from a file of any name to files on disk. */
final class Prints {
  private Prints() {}

  /** The prints by their widths. */
  static TreeMap<Integer, BufferedImage> of(Path folder, byte[] original) throws Exception {
    TreeMap<Integer, BufferedImage> prints = new TreeMap<>();
    for (Path file : files(folder, original)) {
      String name = file.getFileName().toString();
      int width = Integer.parseInt(name.substring(name.indexOf('-') + 1, name.indexOf('.')));
      prints.put(width, Scene.decode(Files.readAllBytes(file)));
      assertEquals(width, prints.get(width).getWidth());
    }
    return prints;
  }

  /** The files of the prints, smallest first; nothing else is left in their folder. */
  static List<Path> files(Path folder, byte[] original) throws Exception {
    Path file = Files.write(folder.resolve("original"), original);
    Path prints = Files.createTempDirectory(folder, "prints");
    PictureFacts facts = new PictureReader().facts(file);
    List<PrintSize> sizes = new Darkroom().print(file, facts, prints);
    List<Path> files =
        sizes.stream().map(size -> prints.resolve(Darkroom.fileName(facts, size))).toList();
    try (Stream<Path> all = Files.list(prints)) {
      assertEquals(Set.copyOf(files), Set.copyOf(all.toList()));
    }
    return files;
  }
}
