package ribband.photo;

import javax.imageio.stream.ImageInputStreamImpl;

/** Bytes in memory as ImageIO reads them: neither copied nor cached on disk. */
final class BytesInput extends ImageInputStreamImpl {
  private final byte[] bytes;

  BytesInput(byte[] bytes) {
    this.bytes = bytes;
  }

  @Override
  public int read() {
    bitOffset = 0;
    return streamPos < bytes.length ? bytes[(int) streamPos++] & 0xFF : -1;
  }

  @Override
  public int read(byte[] into, int offset, int length) {
    bitOffset = 0;
    if (streamPos >= bytes.length) {
      return -1;
    }
    int count = (int) Math.min(length, bytes.length - streamPos);
    System.arraycopy(bytes, (int) streamPos, into, offset, count);
    streamPos += count;
    return count;
  }

  @Override
  public long length() {
    return bytes.length;
  }
}
