package ribband.chart;

/** A hatched rectangle; width and height are 0 or more. */
public record Block(int x, int y, int width, int height, int hatch) {
  public Block {
    if (width < 0 || height < 0) {
      throw new IllegalArgumentException("block " + width + " by " + height);
    }
    Hatch.checked(hatch);
  }
}
