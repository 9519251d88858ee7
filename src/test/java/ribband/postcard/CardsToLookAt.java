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
import ribband.measure.Currency;

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
    cases.put(
        "usd-wide",
        of(usual("March 2026", "third of 9 months with work", 412_60, "USD"), "painted.jpg"));
    cases.put(
        "eur-tall", of(usual("May 2026", "the best month so far", 41_260, "EUR"), "knee.jpg"));
    cases.put(
        "jpy-none",
        of(usual("May 2026", "second of 9 months with work, level with June", 48_200, "JPY"), ""));
    cases.put(
        "kwd-large",
        of(
            usual(
                "September 2026 so far",
                "9th of 19 months with work, level with three others",
                576_600_000,
                "KWD"),
            "fair.jpg#900x900"));
    cases.put(
        "clf-largest",
        of(usual("2026", "second of 3 years with work", 1_000_000_000_000L, "CLF"), ""));
    cases.put("long-names", of(named(LATIN, "Planking", CYRILLIC), ""));
    cases.put("long-cyrillic", of(named(CYRILLIC, LATIN, "Paint"), "painted.jpg"));
    cases.put("long-word", of(named("Plankenlaschunge".repeat(5), "Paint", "Spars"), "knee.jpg"));
    cases.put("panorama", of(named("Planking", LATIN, "Paint"), "painted.jpg#1280x420"));
    cases.put(
        "no-work",
        of(
            new Face(
                "Dunlin",
                "A skiff",
                "July 2026",
                "0",
                "hours",
                "no work on the boat, 142¾\u00a0hours to date",
                "",
                List.of(),
                "",
                ""),
            ""));
    return cases;
  }

  private static final String LATIN =
      "Fairing, filling and sanding of the inside of the hull before the second coating";
  private static final String CYRILLIC =
      "Шпатлёвка, выравнивание и шлифовка внутренней стороны корпуса перед окраской дна";

  private static Case of(Face face, String picture) {
    Map<String, String> folders =
        Map.of(
            "painted.jpg", "2026-11-07-where-she-stands/",
            "knee.jpg", "2026-09-03-knee-again/",
            "fair.jpg", "2026-06-14-looking/");
    return new Case(
        face,
        picture.isEmpty()
            ? Optional.empty()
            : Optional.of(folders.get(picture.split("#")[0]) + picture));
  }

  private static Face usual(String period, String place, long minor, String code) {
    Currency currency = Currency.all().get(code);
    return new Face(
        "Dunlin",
        "A 15-foot glued-lapstrake skiff for oar and sail",
        period,
        "26½",
        "hours",
        place + ", 232:35\u00a0hours to date",
        "9\u00a0nights",
        Faces.shares(52_200, 30_000, 12_600),
        Faces.money(currency, minor, minor),
        "622\u00a0of\u00a02,400\u00a0strakes");
  }

  private static Face named(String first, String second, String third) {
    return new Face(
        "Wandering Albatross of the Northern Shore",
        "A 15-foot glued-lapstrake skiff for oar and sail, built in a one-car garage",
        "September 2026",
        "120¼",
        "hours",
        "9th of 19 months with work, level with three others, 1,232:35\u00a0hours to date",
        "22\u00a0nights",
        List.of(
            new Share(first, "64½", 232_200),
            new Share(second, "40", 144_000),
            new Share(third, "15¾", 56_700)),
        Faces.money(Currency.all().get("USD"), 22_660, 150_980),
        "4\u00a0of\u00a016\u00a0strakes");
  }
}
