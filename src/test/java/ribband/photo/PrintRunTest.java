package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
class PrintRunTest {
  private static final long PLENTY = 1_000_000_000;

  @TempDir Path folder;

  @Test
  void oneThreadAndTwoMakeTheSamePrints() throws Exception {
    List<PrintRun.Order> orders = orders(7);
    assertSameBytes(
        printedBy(new PrintRun(1, PLENTY), orders, "one"),
        printedBy(new PrintRun(2, PLENTY), orders, "two"));
  }

  @Test
  void tightMemoryOnlyMakesItSlower() throws Exception {
    List<PrintRun.Order> orders = orders(4);
    assertSameBytes(
        printedBy(new PrintRun(2, PLENTY), orders, "wide"),
        printedBy(new PrintRun(2, 1), orders, "tight"));
  }

  @Test
  void outcomesStandInTheOrderAskedForAndProgressCountsUp() throws Exception {
    List<PrintRun.Order> orders = new ArrayList<>(orders(5));
    orders.add(orders.get(1));
    List<Integer> told = new ArrayList<>();
    List<PrintRun.Outcome> outcomes =
        new PrintRun(2, PLENTY).print(orders, prints("prints"), told::add);
    assertEquals(orders, outcomes.stream().map(PrintRun.Outcome::order).toList());
    assertEquals(IntStream.rangeClosed(1, 6).boxed().toList(), told);
    for (PrintRun.Outcome outcome : outcomes) {
      assertEquals(Optional.empty(), outcome.unfit());
      assertEquals(PrintSize.of(outcome.order().facts()), outcome.sizes());
    }
  }

  @Test
  void unfitPictureDoesNotStopTheOthers() throws Exception {
    List<PrintRun.Order> orders = orders(3);
    byte[] bytes = Files.readAllBytes(orders.get(1).file());
    Files.write(orders.get(1).file(), new byte[] {bytes[0]});
    for (List<PrintRun.Outcome> outcomes :
        List.of(
            new PrintRun(2, PLENTY).print(orders, prints("prints"), done -> {}),
            new PrintRun(2, PLENTY).tryOut(orders, done -> {}))) {
      assertEquals(
          List.of("", "changed while it was read; run again when it is whole", ""),
          outcomes.stream()
              .map(outcome -> outcome.unfit().map(Exception::getMessage).orElse(""))
              .toList());
      assertEquals(List.of(), outcomes.get(1).sizes());
    }
  }

  @Test
  void memoryRunOutTwiceIsThePicturesOwnProblem() throws Exception {
    List<PrintRun.Order> orders = orders(3);
    List<PrintRun.Outcome> outcomes =
        new PrintRun(2, PLENTY)
            .run(
                orders,
                order -> {
                  if (order.equals(orders.get(1))) {
                    throw new OutOfMemoryError("as if");
                  }
                },
                done -> {});
    assertEquals(
        List.of(
            "",
            "is 501 x 300 px, too large for the memory that Java has here; save it smaller, or"
                + " give Java more with -Xmx",
            ""),
        outcomes.stream()
            .map(outcome -> outcome.unfit().map(Exception::getMessage).orElse(""))
            .toList());
  }

  @Test
  void memoryRunOutOnceIsTriedAgain() throws Exception {
    AtomicInteger tries = new AtomicInteger();
    List<PrintRun.Outcome> outcomes =
        new PrintRun(2, PLENTY)
            .run(
                orders(1),
                order -> {
                  if (tries.incrementAndGet() == 1) {
                    throw new OutOfMemoryError("as if");
                  }
                },
                done -> {});
    assertEquals(Optional.empty(), outcomes.get(0).unfit());
    assertEquals(2, tries.get());
  }

  @Test
  void fullDiskStopsTheRunAndThePool() throws Exception {
    List<PrintRun.Order> orders = orders(3);
    PrintRun.Work full =
        order -> {
          throw new FileSystemException("prints", null, "No space left on device");
        };
    IOException failure =
        assertThrows(
            IOException.class, () -> new PrintRun(2, PLENTY).run(orders, full, done -> {}));
    assertEquals("prints: No space left on device", failure.getMessage());
    for (Thread thread : Thread.getAllStackTraces().keySet()) {
      if (thread.getName().equals("print")) {
        thread.join(10_000);
        assertFalse(thread.isAlive(), "a worker is still alive");
      }
    }
  }

  @Test
  void noOrdersAreNoWork() throws Exception {
    assertEquals(List.of(), PrintRun.onThisMachine().tryOut(List.of(), done -> {}));
  }

  private List<PrintRun.Order> orders(int count) throws Exception {
    List<PrintRun.Order> orders = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      byte[] bytes =
          Exif.inJpeg(
              i % 3 == 2
                  ? Scene.progressiveJpeg(Scene.of(500 + i, 300))
                  : Scene.jpeg(Scene.of(500 + i, 300)),
              Exif.orientation(i % 2 * 2 + 1));
      Path file = Files.write(folder.resolve(i + ".jpg"), bytes);
      orders.add(new PrintRun.Order(file, new PictureReader().facts(file)));
    }
    return orders;
  }

  private Path prints(String name) throws IOException {
    return Files.createDirectory(folder.resolve(name));
  }

  private TreeMap<String, byte[]> printedBy(PrintRun run, List<PrintRun.Order> orders, String name)
      throws Exception {
    Path prints = prints(name);
    run.print(orders, prints, done -> {});
    TreeMap<String, byte[]> bytes = new TreeMap<>();
    try (Stream<Path> all = Files.list(prints)) {
      for (Path print : all.toList()) {
        bytes.put(print.getFileName().toString(), Files.readAllBytes(print));
      }
    }
    assertEquals(2 * orders.size(), bytes.size());
    return bytes;
  }

  private static void assertSameBytes(
      TreeMap<String, byte[]> expected, TreeMap<String, byte[]> actual) {
    assertEquals(expected.keySet(), actual.keySet());
    expected.forEach((name, bytes) -> assertArrayEquals(bytes, actual.get(name), name));
  }
}
