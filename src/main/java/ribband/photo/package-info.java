/**
 * Pictures: reading, turning, scaling, stripping. Enters: a picture file (JPEG, PNG, GIF or WebP,
 * known by its bytes). Leaves: its {@link ribband.photo.PictureFacts}, and small upright JPEGs
 * without any metadata; or the reason why it cannot be shown. Start at {@link
 * ribband.photo.PictureReader} and {@link ribband.photo.PrintRun}.
 */
package ribband.photo;
