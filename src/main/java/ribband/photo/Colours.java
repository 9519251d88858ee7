package ribband.photo;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;

/**
 * Colours of a picture with an ICC profile to sRGB, which prints are in. Not left to the decoders:
 * the JDK's passes profiles of PNGs over, and calls a JPEG unreadable whose profile is wrong.
 */
final class Colours {
  private Colours() {}

  /**
   * A broken profile, or one that is not for RGB, is passed over.
   *
   * @param image 8-bit RGB; its pixels are converted in place
   */
  static void toSrgb(BufferedImage image, byte[] icc) {
    try {
      ICC_Profile profile = ICC_Profile.getInstance(icc);
      if (profile.getColorSpaceType() == ColorSpace.TYPE_RGB) {
        ICC_Profile[] way = {profile, ICC_Profile.getInstance(ColorSpace.CS_sRGB)};
        new ColorConvertOp(way, null).filter(image.getRaster(), image.getRaster());
      }
    } catch (RuntimeException e) {
      // The colour engine reads the profile's tables before it touches a pixel: none is changed.
    }
  }
}
