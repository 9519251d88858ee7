package ribband.photo;

import java.awt.image.BufferedImage;
import java.util.Optional;

/**
 * A decoded picture, whole or already as small as its largest print, not yet turned upright nor
 * brought to sRGB: both are cheaper once it is small.
 *
 * @param pixels 8-bit RGB without transparency, laid on white
 * @param profile the ICC profile that its colours are meant in; none for sRGB
 */
record Negative(BufferedImage pixels, Optional<byte[]> profile) {}
