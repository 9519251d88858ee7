package ribband.album;

import java.util.Optional;
import ribband.photo.PictureFacts;

/** What is remembered of pictures from earlier runs; only ever a shortcut. */
public interface PictureMemory {
  /** Remembers nothing. */
  PictureMemory NONE =
      new PictureMemory() {
        @Override
        public Optional<PictureFacts> facts(String file) {
          return Optional.empty();
        }

        @Override
        public void remember(String file, PictureFacts facts) {}

        @Override
        public boolean isProven(PictureFacts facts) {
          return false;
        }

        @Override
        public void prove(PictureFacts facts) {}
      };

  /** The facts of a file that has not changed since they were read. */
  Optional<PictureFacts> facts(String file);

  void remember(String file, PictureFacts facts);

  /** Whether a picture of these bytes has been decoded whole before. */
  boolean isProven(PictureFacts facts);

  void prove(PictureFacts facts);
}
