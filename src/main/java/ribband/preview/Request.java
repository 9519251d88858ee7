package ribband.preview;

/**
 * What a browser asks for.
 *
 * @param method {@code GET}
 * @param host as the browser names this machine, with the port
 * @param path as it came, per cent signs in
 * @param query what follows the question mark; may be empty
 */
record Request(String method, String host, String path, String query) {}
