package ribband.photo;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.DeflaterOutputStream;

/** Plants an ICC profile: APP2 in a JPEG (ICC.1, annex B.4), iCCP in a PNG (section 11.3.2.3). */
final class Profile {
  private Profile() {}

  /** sRGB's primaries, but samples that count light itself. */
  static byte[] linear() {
    return ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
  }

  /**
   * Display P3's primaries, for samples that count light itself: the columns that SMPTE EG 432-1
   * gives adapted to D50, from memory.
   */
  static byte[] wide() {
    ICC_Profile profile = ICC_Profile.getInstance(linear());
    profile.setData(ICC_Profile.icSigRedColorantTag, column(0.51512, 0.24120, -0.00105));
    profile.setData(ICC_Profile.icSigGreenColorantTag, column(0.29198, 0.69225, 0.04189));
    profile.setData(ICC_Profile.icSigBlueColorantTag, column(0.15710, 0.06657, 0.78407));
    return profile.getData();
  }

  /** ICC.1, section 10.31: XYZ type, three signed numbers of 15 and 16 bits. */
  private static byte[] column(double... xyz) {
    ByteBuffer data = ByteBuffer.allocate(20).put("XYZ ".getBytes(StandardCharsets.US_ASCII));
    data.putInt(0);
    for (double value : xyz) {
      data.putInt((int) Math.round(value * 65_536));
    }
    return data.array();
  }

  /** In two parts, as large profiles are. */
  static byte[] inJpeg(byte[] jpeg, byte[] icc) {
    // A JFIF segment has to stay the first.
    int start = jpeg[3] == (byte) 0xE0 ? 2 + 18 : 2;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, start);
    int middle = icc.length / 2;
    Exif.segment(out, 0xE2, part(1, Arrays.copyOf(icc, middle)));
    Exif.segment(out, 0xE2, part(2, Arrays.copyOfRange(icc, middle, icc.length)));
    out.write(jpeg, start, jpeg.length - start);
    return out.toByteArray();
  }

  private static byte[] part(int number, byte[] data) {
    byte[] opening = "ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII);
    return Exif.join(Exif.join(opening, new byte[] {(byte) number, 2}), data);
  }

  static byte[] inPng(byte[] png, byte[] icc) throws IOException {
    ByteArrayOutputStream profile = new ByteArrayOutputStream();
    profile.writeBytes("planted\0\0".getBytes(StandardCharsets.US_ASCII));
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(profile)) {
      deflater.write(icc);
    }
    return Exif.withChunk(png, "iCCP", profile.toByteArray());
  }
}
