package ribband.press;

import java.nio.file.Path;
import java.util.Optional;

/**
 * One file of the new site.
 *
 * @param hash SHA-256 of its bytes
 * @param staged where it waits; empty where the site already holds these bytes
 */
record Sheet(SitePath path, String hash, Optional<Path> staged) {}
