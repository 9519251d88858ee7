package ribband.preview;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Serves a site to browsers on this machine, and to nobody else; until it is closed. */
public final class Preview implements AutoCloseable {
  /** How many ports are tried, from the one wished for. */
  public static final int PORTS = 20;

  private static final int LAST_PORT = 65_535;

  /** A browser asks for six files at a time. */
  private static final int THREADS = 6;

  private final HttpServer server;
  private final ExecutorService threads;
  private final SiteFolder site;
  private final Answers answers;
  private volatile Edition edition;

  private Preview(HttpServer server, SiteFolder site, PreviewPages pages) {
    this.server = server;
    this.site = site;
    this.answers = new Answers(site, pages, hosts(server.getAddress().getPort()));
    this.edition = new Edition(site.state(), List.of());
    this.threads = Executors.newFixedThreadPool(THREADS, Preview::thread);
    server.setExecutor(threads);
    server.createContext("/", this::handle);
    server.start();
  }

  /**
   * Begins to serve.
   *
   * @param site need not be there yet
   * @param port the one wished for; where it is in use the next free one is taken
   * @param journal what the journal's folder is called
   * @param release the tool and its version
   * @throws IOException where none of {@link #PORTS} ports is free
   */
  public static Preview open(Path site, int port, String journal, String release)
      throws IOException {
    return new Preview(
        free(port), new SiteFolder(site.toAbsolutePath()), new PreviewPages(journal, release));
  }

  private static HttpServer free(int wished) throws IOException {
    int last = Math.min(LAST_PORT, wished + PORTS - 1);
    for (int port = wished; port <= last; port++) {
      Optional<HttpServer> server = at(port);
      if (server.isPresent()) {
        return server.get();
      }
    }
    throw new IOException("cannot serve: the ports " + wished + " to " + last + " are in use");
  }

  private static Optional<HttpServer> at(int port) throws IOException {
    // Else every answer waits 40 ms for the browser to say that it has the first part. Only this
    // server asks for it, once, before the first is made.
    System.setProperty("sun.net.httpserver.nodelay", "true");
    InetAddress loopback = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    try {
      return Optional.of(HttpServer.create(new InetSocketAddress(loopback, port), 0));
    } catch (BindException e) {
      return Optional.empty();
    }
  }

  private static List<String> hosts(int port) {
    return List.of("127.0.0.1:" + port, "localhost:" + port);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "preview");
    thread.setDaemon(true);
    return thread;
  }

  /** Where the first page is. */
  public URI address() {
    return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
  }

  /** Takes the site as it stands now, and what is to be told beside it. */
  public void show(List<Trouble> troubles) {
    edition = new Edition(site.state(), troubles);
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      URI asked = exchange.getRequestURI();
      Request request =
          new Request(
              exchange.getRequestMethod(),
              Optional.ofNullable(exchange.getRequestHeaders().getFirst("Host")).orElse(""),
              Optional.ofNullable(asked.getRawPath()).orElse(""),
              Optional.ofNullable(asked.getRawQuery()).orElse(""));
      send(exchange, answers.to(request, edition));
    }
  }

  private static void send(HttpExchange exchange, Answer answer) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", answer.type());
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
    if (answer.status() == Answer.ONLY_READ) {
      exchange.getResponseHeaders().set("Allow", "GET, HEAD");
    }
    int length = answer.content().length;
    if (exchange.getRequestMethod().equals("HEAD")) {
      exchange.getResponseHeaders().set("Content-Length", Integer.toString(length));
      exchange.sendResponseHeaders(answer.status(), -1);
    } else {
      exchange.sendResponseHeaders(answer.status(), length == 0 ? -1 : length);
      exchange.getResponseBody().write(answer.content());
    }
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
