package ribband.whole;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import ribband.cli.InMemory;

/** A small journal with every key of the format in it, for tests of whole runs. */
public final class FullJournal {
  public static final String PROJECT =
      """
      name: Wigeon
      what: An invented punt for tests
      currency: USD
      units: us
      time zone: America/Chicago
      started: 2026-01-02
      site: {address: 'https://example.org/wigeon/', show money: true, about: about.md}
      phases:
        - {id: moulds, title: Moulds and strongback, hours: 12, cost: 80}
        - {id: planking, title: Planking, hours: 40, cost: 400}
        - {id: fairing, title: Fairing}
      carried:
        through: 2026-01-10
        sessions: 3
        hours: {moulds: 7.5}
        cost: {moulds: 61.20}
      materials:
        epoxy: {unit: fl oz, on hand: 20 fl oz, worth: 38.00, lead time: 10 days, never below: 4 fl oz}
      adhesives:
        epoxy: {material: epoxy, mix: 2 to 1 by volume, densities: 1.15 to 0.97, rated at: 72 F,
                pot life: 20 min, open time: 60 min, soft for: 90 min, clamp time: 8 h,
                recoat: 3 h to 24 h, full cure: 7 days, coldest: 50 F, spread: 140 in2 per fl oz}
      pieces:
        strakes: {total: 8, phase: planking, sides: [port, starboard], glue area: 1 in x 96 in,
                  adhesive: epoxy, clamps: 10, hours: 3}
      clamps: 24
      away:
        - {from: 2026-07-01, to: 2026-07-20, why: holiday}
      shop temperatures: {jan: 38 F, feb: 41 F}
      """;

  private FullJournal() {}

  /** Writes the journal into an empty folder. */
  public static void write(Path folder) throws IOException {
    new InMemory(folder)
        .with("project.yaml", PROJECT)
        .with(
            "about.md",
            "She is *invented*, for [tests](https://example.org/).\n\n## Her lines\n\nTrue.\n")
        .with(
            "2026/2026-01-15-strongback.md",
            """
            ---
            title: The strongback
            phase: moulds
            hours: 2:45
            cost: 24.50
            complete: {moulds: 80%}
            todo:
              - {id: stem-bevel, what: Bevel the stem, phase: moulds, hours: 1.5}
            ---
            Straight within a pencil line. See [the garboards](2026-03-14-garboards.md#what-went-wrong).
            """)
        .with(
            "2026/2026-01-16.md",
            "---\nhours: 45m\nphase: moulds\ndone: [stem-bevel]\n---\nShort.\n")
        .with(
            "2026/2026-03-14-garboards.md",
            """
            ---
            title: Garboards on, both & <sides>
            phase: planking
            hours: {planking: 3:20, fairing: 0:40}
            cost: 88.20
            materials:
              used: {epoxy: 2 fl oz, ring nails: 40}
              left: {ring nails: 160}
              bought:
                - {material: epoxy, amount: 2 of 1 qt, cost: 64.50, from: the chandlery,
                   receipt: receipts/0314.txt, arrived: 2026-03-22}
                - {item: sanding discs, cost: 23.70, phase: fairing}
            pieces: {strakes: {port: [1], starboard: [1]}}
            joints:
              - {name: Garboard scarf, adhesive: epoxy, spread at: 20:25, clamped at: 20:40,
                 temperature: 61 F, area: 2 1/2 in x 6 in}
            coats:
              - {what: Inside of the garboards, adhesive: epoxy, at: 21:10, temperature: 64 F, area: 8 ft2}
            todo:
              - {id: trim-ends, what: Trim the strake ends, after: [strakes, planking], phase: fairing, hours: 1}
            lesson: Dry-fit with every clamp before opening the resin.
            photos:
              - {file: wide.jpg, caption: The first plank, alt: A plank on moulds, cover: true}
              - {file: tall.png, alt: A stem}
              - square.jpg
            ---
            The first planks. **Twist** at the stem.[^1] Planks | and ~~nails~~ rivets, https://example.org/rivets

            ## What went wrong

            - [x] dry fit
            - [ ] wipe the squeeze-out

            | strake | port | starboard |
            |:--|--:|:-:|
            | garboard | 96 in | 96 in |

            ![The twist, close](inline.jpg)

            > Averyveryveryveryveryveryveryveryveryveryverylongwordthatdoesnotbreakanywhereatall.

                some code that is rather long and goes on beyond the edge of a phone held upright

            #### A deeper head

            1. one
            2. two

            | strake | port | starboard | port | starboard | port | starboard |
            |:--|--:|--:|--:|--:|--:|--:|
            | garboard | 96 in | 96 in | 96 in | 96 in | 96 in | 96 in |

            [^1]: Eighteen inches of it.
            """)
        .with(
            "2026/2026-03-15-private.md",
            "---\ntitle: Secretly\nphase: planking\nhours: 1\ncost: 10\nprivate: true\n---\nHidden words.\n")
        .with(
            "2026/2026-03-20-refund.md",
            "---\nphase: planking\ncost: -120.00\n---\nThe wrong planks went back.\n")
        .with("2026/2026-05-01-fair.md", "---\nphase: fairing\nhours: 2h30\nphotos: none\n---\n")
        .with("receipts/0314.txt", "paid\n");
    picture(folder.resolve("2026/2026-03-14-garboards/wide.jpg"), 1700, 1100);
    picture(folder.resolve("2026/2026-03-14-garboards/tall.png"), 700, 1000);
    picture(folder.resolve("2026/2026-03-14-garboards/square.jpg"), 500, 500);
    picture(folder.resolve("2026/2026-03-14-garboards/inline.jpg"), 1000, 640);
  }

  /** Draws a picture that has an upper left corner of its own. */
  public static void picture(Path file, int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setPaint(new GradientPaint(0, 0, new Color(0xC9A36B), width, height, new Color(0x31424F)));
    pen.fillRect(0, 0, width, height);
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, width / 5, height / 5);
    pen.dispose();
    Files.createDirectories(file.getParent());
    String name = file.toString();
    ImageIO.write(image, name.substring(name.lastIndexOf('.') + 1), file.toFile());
  }
}
