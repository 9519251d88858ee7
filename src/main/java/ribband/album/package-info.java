/**
 * Entries with their words parsed and their pictures looked at. Enters: a journal. Leaves: an
 * {@link ribband.album.Album}, and the problems that only words and pictures have: links that lead
 * nowhere, pictures that are missing or cannot be shown. Start at {@link
 * ribband.album.AlbumReader}.
 */
package ribband.album;
