package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Copies of receipts have names that stand in order and that any disk takes. */
class ReceiptNameTest {
  @Test
  void theNumberStandsBeforeTheNameOfTheFile() {
    assertEquals("001-0314-epoxy.pdf", ReceiptName.of(1, "receipts/0314-epoxy.pdf"));
    assertEquals("042-receipt", ReceiptName.of(42, "receipt"));
    assertEquals("1234-a.b.jpg", ReceiptName.of(1234, "a/b/a.b.jpg"));
  }

  @Test
  void signsThatSomeDiskOrAddressMisreadsBecomeHyphens() {
    assertEquals("001-no-3-paid-.pdf", ReceiptName.of(1, "no #3 (paid?).pdf"));
    assertEquals("002-a-b.pdf", ReceiptName.of(2, "a\u202e:\nb.pdf"));
    assertEquals("003-Blåbær-ö.pdf", ReceiptName.of(3, "receipts/Blåbær o\u0308.pdf"));
  }

  @Test
  void longNamesAreCutBeforeTheirEnding() {
    String cut = ReceiptName.of(7, "å".repeat(120) + "𝔊".repeat(20) + ".pdf");
    assertTrue(cut.startsWith("007-å") && cut.endsWith(".pdf"), cut);
    int bytes = cut.getBytes(StandardCharsets.UTF_8).length;
    assertTrue(bytes <= 255 && bytes > 250, "bytes " + bytes);
    assertEquals(cut, new String(cut.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
  }

  /** 255 bytes are what the usual file systems take: common practice, no source. */
  @Test
  void aNameIsCutOnlyAboveTheLongestThatDisksTake() {
    assertEquals("001-" + "a".repeat(247) + ".pdf", ReceiptName.of(1, "a".repeat(247) + ".pdf"));
    assertEquals("001-" + "a".repeat(247) + ".pdf", ReceiptName.of(1, "a".repeat(248) + ".pdf"));
    assertEquals("001-" + "a".repeat(251), ReceiptName.of(1, "a".repeat(300)));
  }

  @Test
  void anEndingIsKeptUpToSevenLettersAndNeverTheWholeName() {
    String stem = "a".repeat(300);
    assertEquals("001-" + "a".repeat(243) + ".1234567", ReceiptName.of(1, stem + ".1234567"));
    assertEquals("001-" + "a".repeat(251), ReceiptName.of(1, stem + ".12345678"));
    assertEquals("001-.pdf", ReceiptName.of(1, ".pdf"));
  }
}
