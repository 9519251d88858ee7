package ribband.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The preview over HTTP, as a browser on this machine reaches it. */
class PreviewTest {
  private static final byte[] LOOPBACK = {127, 0, 0, 1};
  private static final int HALF_A_MEGABYTE = 1 << 19;

  @TempDir private Path site;
  private final HttpClient client = HttpClient.newHttpClient();

  @BeforeEach
  void published() throws IOException {
    Files.writeString(site.resolve("index.html"), "<head></head>On.");
    Files.writeString(site.resolve("site-files.txt"), "");
  }

  private Preview open(int port) throws IOException {
    return Preview.open(site, port, "boat", "ribband 1.2.3");
  }

  private HttpResponse<String> send(Preview preview, String method, String path)
      throws IOException, InterruptedException {
    URI uri = preview.address().resolve(path);
    HttpRequest request =
        HttpRequest.newBuilder(uri).method(method, BodyPublishers.noBody()).build();
    return client.send(request, BodyHandlers.ofString());
  }

  @Test
  void filesAreServedUnkeptAndAsWhatTheyAre() throws Exception {
    try (Preview preview = open(0)) {
      HttpResponse<String> page = send(preview, "GET", "/");
      assertEquals(200, page.statusCode());
      assertTrue(page.body().endsWith("</head>On."), page.body());
      assertEquals(Optional.of("no-store"), page.headers().firstValue("Cache-Control"));
      assertEquals(Optional.of("nosniff"), page.headers().firstValue("X-Content-Type-Options"));
      assertEquals(
          Optional.of("text/html; charset=utf-8"), page.headers().firstValue("Content-Type"));
      assertEquals(404, send(preview, "GET", "/none.html").statusCode());
      assertEquals(Optional.empty(), page.headers().firstValue("Allow"));
    }
  }

  @Test
  void aHeadSaysHowLongThePageIs() throws Exception {
    try (Preview preview = open(0)) {
      HttpResponse<String> head = send(preview, "HEAD", "/");
      assertEquals(200, head.statusCode());
      assertEquals("", head.body());
      assertEquals(
          Optional.of(Integer.toString(send(preview, "GET", "/").body().length())),
          head.headers().firstValue("Content-Length"));
    }
  }

  @Test
  void whatWritesIsToldWhatIsAllowed() throws Exception {
    try (Preview preview = open(0)) {
      HttpResponse<String> post = send(preview, "POST", "/");
      assertEquals(405, post.statusCode());
      assertEquals(Optional.of("GET, HEAD"), post.headers().firstValue("Allow"));
    }
  }

  @Test
  void whatIsNewIsAnsweredAfterEachShow() throws Exception {
    try (Preview preview = open(0)) {
      String first = send(preview, "GET", "/.ribband/now?x").body();
      String known = first.replaceAll("(?s).*data-edition=\"(.*?)\".*", "$1");
      assertEquals(204, send(preview, "GET", "/.ribband/now?" + known + ".").statusCode());
      preview.show(List.of(Trouble.outside("The disk is full.")));
      String told = send(preview, "GET", "/.ribband/now?" + known + ".").body();
      assertTrue(told.contains("The disk is full.") && told.contains(known), told);
      Files.writeString(site.resolve("more.html"), "<head></head>More.");
      preview.show(List.of());
      String next = send(preview, "GET", "/.ribband/now?" + known + ".").body();
      assertTrue(!next.contains("The disk is full.") && !next.contains(known), next);
    }
  }

  /** No client of a library sends such, but anybody can. */
  @Test
  void rawRequestsGetNothingFromOutside() throws Exception {
    try (Preview preview = open(0)) {
      String host = "Host: 127.0.0.1:" + preview.address().getPort() + "\r\n";
      assertEquals(200, raw(preview, "GET / HTTP/1.1\r\n" + host));
      assertEquals(421, raw(preview, "GET / HTTP/1.1\r\n"));
      assertEquals(421, raw(preview, "GET / HTTP/1.1\r\nHost: boat.example\r\n"));
      assertEquals(404, raw(preview, "GET /../x HTTP/1.1\r\n" + host));
      assertEquals(404, raw(preview, "GET /x/../.. HTTP/1.1\r\n" + host));
      assertEquals(400, raw(preview, "GET /a\\b HTTP/1.1\r\n" + host));
      assertEquals(400, raw(preview, "GET /%zz HTTP/1.1\r\n" + host));
      // Some Java closes the door on that without a word.
      assertNotEquals(200, raw(preview, "GET mailto:x HTTP/1.1\r\n" + host));
      assertEquals(200, raw(preview, "GET / HTTP/1.1\r\n" + host));
    }
  }

  /** The status that is answered; 0 without an answer. */
  private static int raw(Preview preview, String request) throws IOException {
    try (Socket socket =
        new Socket(InetAddress.getByAddress(LOOPBACK), preview.address().getPort())) {
      socket
          .getOutputStream()
          .write((request + "Connection: close\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
      byte[] answer = socket.getInputStream().readAllBytes();
      return answer.length == 0
          ? 0
          : Integer.parseInt(new String(answer, StandardCharsets.US_ASCII).split(" ")[1]);
    }
  }

  @Test
  void aPortInUseGetsTheNextFreeOne() throws IOException {
    try (Preview first = open(0);
        Preview second = open(first.address().getPort())) {
      assertTrue(second.address().getPort() > first.address().getPort());
      assertEquals("127.0.0.1", second.address().getHost());
      assertEquals("/", second.address().getPath());
    }
  }

  @Test
  void aPortIsFreeAgainWhenItIsClosed() throws Exception {
    Preview first = open(0);
    URI address = first.address();
    first.close();
    HttpRequest request = HttpRequest.newBuilder(address).build();
    assertThrows(ConnectException.class, () -> client.send(request, BodyHandlers.discarding()));
    try (Preview second = open(address.getPort())) {
      assertEquals(address, second.address());
    }
  }

  @Test
  void withoutAFreePortItSaysSo() throws IOException {
    List<ServerSocket> taken = new ArrayList<>();
    try {
      int last = 65_535;
      for (int port = last - 2; port <= last; port++) {
        try {
          taken.add(new ServerSocket(port, 1, InetAddress.getByAddress(LOOPBACK)));
        } catch (IOException e) {
          // Somebody else has it; that is as good.
          continue;
        }
      }
      IOException refused = assertThrows(IOException.class, () -> open(last - 2));
      assertEquals("cannot serve: the ports 65533 to 65535 are in use", refused.getMessage());
    } finally {
      for (ServerSocket socket : taken) {
        socket.close();
      }
    }
  }

  @Test
  void aFileThatIsReplacedMeanwhileIsSentWhole() throws Exception {
    Path file = site.resolve("big.txt");
    Files.writeString(file, "a".repeat(HALF_A_MEGABYTE));
    try (Preview preview = open(0)) {
      for (int round = 0; round < 20; round++) {
        Path next = site.resolve("next.txt");
        Files.writeString(next, (round % 2 == 0 ? "b" : "a").repeat(HALF_A_MEGABYTE));
        var sent =
            client.sendAsync(
                HttpRequest.newBuilder(preview.address().resolve("/big.txt")).build(),
                BodyHandlers.ofString());
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
        String body = sent.get().body();
        assertEquals(HALF_A_MEGABYTE, body.length());
        assertEquals(1, body.chars().distinct().count());
      }
    }
  }
}
