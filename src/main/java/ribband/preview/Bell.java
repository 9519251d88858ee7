package ribband.preview;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Wakes one who rests as soon as something stirs in some folders, where the system tells of it.
 * Only ever sooner than he would wake by himself: what it misses, the next look finds.
 */
final class Bell implements AutoCloseable {
  /** Empty where the system has no more to give. */
  private final Optional<WatchService> service;

  private final Map<Path, WatchKey> keys = new HashMap<>();
  private final CountDownLatch closed = new CountDownLatch(1);

  Bell(Optional<WatchService> service) {
    this.service = service;
  }

  static Bell ofThisMachine() {
    try {
      return new Bell(Optional.of(FileSystems.getDefault().newWatchService()));
    } catch (IOException e) {
      return new Bell(Optional.empty());
    }
  }

  /** Listens to these folders alone. One that is not there is passed over. */
  void listenTo(Set<Path> folders) {
    keys.values().removeIf(key -> !key.isValid());
    for (Path folder : Set.copyOf(keys.keySet())) {
      if (!folders.contains(folder)) {
        keys.remove(folder).cancel();
      }
    }
    if (service.isPresent()) {
      for (Path folder : folders) {
        listenTo(folder, service.get());
      }
    }
  }

  private void listenTo(Path folder, WatchService service) {
    try {
      if (!keys.containsKey(folder)) {
        keys.put(
            folder,
            folder.register(
                service,
                StandardWatchEventKinds.ENTRY_CREATE,
                StandardWatchEventKinds.ENTRY_DELETE,
                StandardWatchEventKinds.ENTRY_MODIFY));
      }
    } catch (IOException | ClosedWatchServiceException e) {
      // Gone meanwhile, or more folders than the system listens to.
      return;
    }
  }

  /** Rests until something stirs, the time is over or the bell is closed; whether it is closed. */
  boolean rest(Duration atMost) throws InterruptedException {
    if (service.isEmpty()) {
      return restInAnyCase(atMost);
    }
    try {
      WatchKey stirred = service.get().poll(atMost.toNanos(), TimeUnit.NANOSECONDS);
      while (stirred != null) {
        stirred.pollEvents();
        stirred.reset();
        stirred = service.get().poll();
      }
    } catch (ClosedWatchServiceException e) {
      return true;
    }
    return isClosed();
  }

  /** Rests until the time is over or the bell is closed; whether it is closed. */
  boolean restInAnyCase(Duration time) throws InterruptedException {
    return closed.await(time.toNanos(), TimeUnit.NANOSECONDS);
  }

  boolean isClosed() {
    return closed.getCount() == 0;
  }

  /** May be called by another thread. */
  @Override
  public void close() {
    closed.countDown();
    try {
      if (service.isPresent()) {
        service.get().close();
      }
    } catch (IOException e) {
      // Nobody listens any more; the system takes it down with the program.
      return;
    }
  }
}
