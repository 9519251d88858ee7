package ribband.postcard;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/** Draws cards to be looked at, each as large as it is and as a phone shows it. No test. */
final class CardsToLookAt {
  private static final String PICTURES = "sample-journal/2026/";

  private CardsToLookAt() {}

  private record Case(Face face, Optional<String> picture) {}

  public static void main(String[] args) throws IOException {
    Path out = Files.createDirectories(Path.of(args[0]));
    for (Map.Entry<String, Case> each : cases().entrySet()) {
      Optional<BufferedImage> picture = Optional.empty();
      if (each.getValue().picture().isPresent()) {
        picture = Optional.of(picture(each.getValue().picture().get()));
      }
      for (Shape shape : Shape.values()) {
        byte[] png = Postcard.png(each.getValue().face(), picture, shape);
        Files.write(out.resolve(each.getKey() + "-" + shape.width() + ".png"), png);
        if (shape == Shape.SHARED) {
          phone(png, out.resolve(each.getKey() + "-phone.png"));
        }
      }
    }
  }

  private static BufferedImage picture(String name) throws IOException {
    String[] cut = name.split("#");
    BufferedImage whole = ImageIO.read(Path.of(PICTURES + cut[0]).toFile());
    if (cut.length == 1) {
      return whole;
    }
    String[] size = cut[1].split("x");
    int width = Integer.parseInt(size[0]);
    int height = Integer.parseInt(size[1]);
    return whole.getSubimage(
        (whole.getWidth() - width) / 2, (whole.getHeight() - height) / 2, width, height);
  }

  private static void phone(byte[] png, Path file) throws IOException {
    BufferedImage card = ImageIO.read(new ByteArrayInputStream(png));
    BufferedImage half = new BufferedImage(340, 178, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = half.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(card.getScaledInstance(340, 178, java.awt.Image.SCALE_AREA_AVERAGING), 0, 0, null);
    g.dispose();
    ImageIO.write(half, "png", file.toFile());
  }

  private static Map<String, Case> cases() {
    Map<String, Case> cases = new LinkedHashMap<>();
    List<Share> three =
        List.of(
            new Share("Planking", "14½", 52_200),
            new Share("Fairing", "8:20", 30_000),
            new Share("Spars and rig", "3½", 12_600));
    cases.put(
        "usd-wide",
        new Case(
            new Face(
                "Dunlin",
                "A 15-foot glued-lapstrake skiff for oar and sail",
                "March 2026",
                "26½",
                "hours",
                "third of 9 months with work (June and May beat it)",
                "9 nights",
                three,
                "$1,234,567.89",
                "232:35 hours so far",
                "4 strakes"),
            Optional.of("2026-11-07-where-she-stands/painted.jpg")));
    cases.put(
        "eur-tall",
        new Case(
            new Face(
                "Dunlin",
                "A 15-foot glued-lapstrake skiff for oar and sail",
                "September 2026",
                "31:40",
                "hours",
                "the best month so far",
                "12 nights",
                three,
                "€412.60",
                "198¼ hours and €2,411.00 so far",
                "2 knees"),
            Optional.of("2026-09-03-knee-again/knee.jpg")));
    cases.put(
        "jpy-none",
        new Case(
            new Face(
                "Dunlin",
                "A 15-foot glued-lapstrake skiff for oar and sail",
                "May 2026",
                "18¾",
                "hours",
                "9th of 9 months with work (October, June, September, August and four more beat it)",
                "7 nights",
                three,
                "¥48,200",
                "142¾ hours so far",
                ""),
            Optional.empty()));
    cases.put(
        "kwd-panorama",
        new Case(
            new Face(
                "Wandering Albatross of the Northern Shore",
                "A 15-foot glued-lapstrake skiff for oar and sail, built in a one-car garage",
                "2026",
                "1,234¾",
                "hours",
                "second of 3 years",
                "211 nights",
                List.of(
                    new Share("Planking", "614½", 2_212_200),
                    new Share("Fairing, filling and sanding of the inside", "208:20", 750_000),
                    new Share("Spars", "103½", 372_600),
                    new Share("Paint", "80", 288_000),
                    new Share("Sails", "70", 252_000),
                    new Share("Lofting", "60", 216_000),
                    new Share("Moulds", "50", 180_000),
                    new Share("Trailer", "48½", 174_600)),
                "KWD\u00a0123,456.789",
                "2,232½ hours and KWD\u00a01,123,456.789 so far",
                "16 strakes"),
            Optional.of("2026-11-07-where-she-stands/painted.jpg#1280x420")));
    cases.put(
        "one-phase-square",
        new Case(
            new Face(
                "Dunlin",
                "",
                "June 2026",
                "40",
                "minutes",
                "8th of 9 months with work, level with July (May, June and five more beat it)",
                "1 night",
                List.of(new Share("Planking", "0:40", 2_400)),
                "",
                "12 hours so far",
                ""),
            Optional.of("2026-06-14-looking/fair.jpg#900x900")));
    cases.put(
        "no-work",
        new Case(
            new Face(
                "Dunlin",
                "A skiff",
                "July 2026",
                "0",
                "hours",
                "No work on the boat",
                "",
                List.of(),
                "",
                "142¾ hours so far",
                ""),
            Optional.empty()));
    cases.put(
        "long-words",
        new Case(
            new Face(
                "Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichennadel",
                "Ψαρόβαρκα, лодка 木の舟 סירה",
                "September 2026",
                "120¼",
                "hours",
                "9th of 19 months with work, level with May, June and July (October 2025, June 2025,"
                    + " September 2025, August 2025 and four more beat it)",
                "22 nights",
                List.of(
                    new Share("x".repeat(60), "64½", 232_200),
                    new Share(
                        "Fairing, filling and sanding of the inside of the hull", "40", 144_000),
                    new Share("Paint", "15¾", 56_700)),
                "USD\u00a0123,456,789,012.34",
                "1,232½ hours and USD\u00a0123,456,789,012.34 so far",
                "4 strakes, 12 frames and 3 knees"),
            Optional.of("2026-08-22-thwarts/thwarts.jpg")));
    return cases;
  }
}
