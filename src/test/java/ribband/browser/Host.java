package ribband.browser;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder over HTTP, below a path of its own, on this machine alone. */
final class Host implements AutoCloseable {
  private final HttpServer server;

  Host(Path folder) throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/boat/",
        exchange -> {
          Path file =
              folder.resolve(exchange.getRequestURI().getPath().substring("/boat/".length()));
          boolean there = Files.isRegularFile(file);
          String type = Files.probeContentType(file);
          if (type != null) {
            exchange.getResponseHeaders().set("Content-Type", type);
          }
          exchange.sendResponseHeaders(there ? 200 : 404, there ? 0 : -1);
          try (exchange) {
            if (there) {
              Files.copy(file, exchange.getResponseBody());
            }
          }
        });
    server.start();
  }

  URI address() {
    return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/boat/");
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
