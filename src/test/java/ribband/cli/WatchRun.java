package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A {@code watch} that runs in memory, and what its terminal and its pages say. */
public final class WatchRun implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final long GLANCE_MILLIS = 20;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final CompletableFuture<Integer> code = new CompletableFuture<>();
  private final HttpClient client = HttpClient.newHttpClient();
  private final Thread thread;

  /**
   * @param folder to start in
   * @param arguments after {@code watch}
   */
  public WatchRun(Path folder, String... arguments) {
    String[] all = Stream.concat(Stream.of("watch"), Stream.of(arguments)).toArray(String[]::new);
    Ribband program = new Ribband(new InMemory(folder).surroundings(out, err));
    thread = new Thread(() -> code.complete(program.run(all)), "watch");
    thread.start();
  }

  public String out() {
    return out.toString();
  }

  public String err() {
    return err.toString();
  }

  /** Where the first page is. */
  public URI address() throws Exception {
    await("its address", () -> out().contains("/\n"));
    return URI.create(out().lines().findFirst().orElseThrow());
  }

  /** Waits until the terminal has said something. */
  public WatchRun said(String words) throws Exception {
    await(words, () -> (out() + err()).contains(words));
    return this;
  }

  /** Waits until so many publishes have been told. */
  public WatchRun published(int times) throws Exception {
    await(times + " publishes", () -> publishes() >= times);
    return this;
  }

  public long publishes() {
    return out().lines().filter(line -> line.contains(" written, ")).count();
  }

  /** Waits for a page of the preview that says something. */
  WatchRun shows(String path, String words) throws Exception {
    await(path + " with " + words, () -> get(path).body().contains(words));
    return this;
  }

  HttpResponse<String> get(String path) throws Exception {
    HttpRequest request = HttpRequest.newBuilder(address().resolve(path)).build();
    return client.send(request, HttpResponse.BodyHandlers.ofString());
  }

  private void await(String what, Callable<Boolean> holds) throws Exception {
    for (long left = PATIENCE.toMillis(); !holds.call(); left -= GLANCE_MILLIS) {
      if (left <= 0 || code.isDone()) {
        fail("waited in vain for " + what + "; out:\n" + out() + "err:\n" + err());
      }
      Thread.sleep(GLANCE_MILLIS);
    }
  }

  /** Waits until it ends by itself; its exit code. */
  int ended() throws Exception {
    return code.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
  }

  /** As many editors do: writes beside, then puts the new file in place of the old. */
  public static void save(Path file, String text) throws IOException {
    Path beside = file.resolveSibling("." + file.getFileName() + ".swp");
    Files.writeString(beside, text, StandardCharsets.UTF_8);
    Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Ends it, and sees that nothing of it is left. */
  @Override
  public void close() {
    thread.interrupt();
    try {
      assertEquals(0, ended(), List.of(out(), err()).toString());
      thread.join();
    } catch (Exception e) {
      throw new AssertionError("it does not end", e);
    }
  }
}
