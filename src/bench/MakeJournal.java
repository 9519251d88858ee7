import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.SplittableRandom;

/**
 * Writes a journal to measure with: so many entries of 270 words, so many pictures. Always the same
 * bytes. Run as: java MakeJournal.java FOLDER ENTRIES PICTURES [PICTURE_FILE]
 */
class MakeJournal {
  private static final String[] WORDS =
      ("plank strake scarf resin clamp bevel batten mould stem keel garboard sheer transom thwart knee"
              + " the a one and then with before after slowly again tonight straight fair cold warm shim"
              + " plane sand coat glue dry wet left right port starboard two three inches pencil line")
          .split(" ");
  private static final String[] PHASES = {"moulds", "planking", "inside", "spars", "finishing"};

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    int entries = Integer.parseInt(args[1]);
    int pictures = Integer.parseInt(args[2]);
    byte[] picture = pictures > 0 ? Files.readAllBytes(Path.of(args[3])) : new byte[0];
    SplittableRandom random = new SplittableRandom(7);
    write(
        folder.resolve("project.yaml"),
        "name: Bench\ncurrency: USD\nphases:\n"
            + "  - {id: moulds, hours: 300}\n  - {id: planking, hours: 900, cost: 4000}\n"
            + "  - {id: inside}\n  - {id: spars}\n  - {id: finishing}\n"
            + "adhesives: {epoxy: {spread: 140 in2 per fl oz}}\n"
            + "pieces: {strakes: {total: 99999, phase: planking}}\n");
    int made = 0;
    for (int i = 0; i < entries; i++) {
      LocalDate date = LocalDate.of(2000, 1, 1).plusDays(i * 9000L / Math.max(entries, 1));
      String name = date + "-night-" + i;
      Path entry = folder.resolve(date.getYear() + "/" + name + ".md");
      write(entry, text(i, random));
      int share = (int) ((long) pictures * (i + 1) / entries) - made;
      for (int p = 0; p < share; p++, made++) {
        // A different comment at the end makes each picture's bytes its own.
        Path file = entry.resolveSibling(name + "/" + p + ".jpg");
        Files.createDirectories(file.getParent());
        Files.write(file, stamped(picture, made));
      }
    }
  }

  private static byte[] stamped(byte[] jpeg, int number) {
    byte[] comment = ("bench " + number).getBytes(StandardCharsets.US_ASCII);
    byte[] out = new byte[jpeg.length + 4 + comment.length];
    System.arraycopy(jpeg, 0, out, 0, 2);
    out[2] = (byte) 0xFF;
    out[3] = (byte) 0xFE;
    out[4] = 0;
    out[5] = (byte) (comment.length + 2);
    System.arraycopy(comment, 0, out, 6, comment.length);
    System.arraycopy(jpeg, 2, out, 6 + comment.length, jpeg.length - 2);
    return out;
  }

  private static String text(int i, SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    text.append("---\ntitle: Night ").append(i);
    text.append("\nphase: ").append(PHASES[random.nextInt(PHASES.length)]);
    text.append("\nhours: ").append(1 + random.nextInt(3)).append(':').append(10 + random.nextInt(50));
    text.append("\ncost: ").append(20 + random.nextInt(80)).append(".50\nmaterials:\n");
    text.append("  used: {epoxy: 2 fl oz, ring nails: 40}\n  bought:\n");
    text.append("    - {material: epoxy, amount: 1 qt, cost: 12.25, from: the chandlery}\n");
    text.append("pieces: {strakes: 1}\njoints:\n  - name: Scarf ").append(i);
    text.append("\n    adhesive: epoxy\n    spread at: 20:25\n    clamped at: 20:40\n");
    text.append("    temperature: 61 F\n    area: 2 1/2 in x 6 in\n");
    text.append("todo:\n  - {id: job-").append(i).append(", what: Look again, hours: 1}\n");
    text.append("lesson: Dry-fit first.\n---\n");
    for (int p = 0; p < 6; p++) {
      text.append(sentence(45, random)).append("\n\n");
    }
    return text.append("| side | inches |\n|---|--:|\n| port | 96 |\n| starboard | 95 |\n").toString();
  }

  private static String sentence(int words, SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    for (int w = 0; w < words; w++) {
      String word = WORDS[random.nextInt(WORDS.length)];
      text.append(w == 0 ? "" : " ").append(w % 15 == 7 ? "**" + word + "**" : word);
    }
    return text.append('.').toString();
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }
}
