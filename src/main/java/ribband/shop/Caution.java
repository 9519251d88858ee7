package ribband.shop;

/**
 * The usual cautions of the shop, in short. They remind; none of them makes the work harmless.
 * Sources: CPWR on epoxy and HSE on wood dust (skin, dust), NFPA on oily rags and solvents, NIOSH
 * 96-118 on carbon monoxide, OSHA on table saws; cups that heat up are common practice, no source.
 */
public enum Caution {
  RESIN(
      "Resin and hardener irritate, and skin can become allergic to them for good: wear laminate or"
          + " thick nitrile gloves, and never clean skin with solvent."),
  CUP(
      "A cup full of mixed resin heats up by itself: mix small batches, spread them out at once,"
          + " leave what is left over outdoors on concrete until it is cold."),
  DUST(
      "Wood dust can cause asthma and worse, and dust of half-cured resin is resin: draw it off at"
          + " the tool and wear a mask that fits."),
  SAW(
      "Ripping thin strips: guard and splitter on, featherboard and push stick, and nobody in line"
          + " with the blade."),
  SOLVENT(
      "Solvent vapor catches fire: open the doors, no flame or spark, lids on. Rags with drying oil"
          + " heat themselves: dry them flat outdoors, never in a heap."),
  HEAT(
      "Heating the shop: heaters that burn fuel without a flue can kill by carbon monoxide, open"
          + " doors or not; fit an alarm.");

  /** Stands below any of them. */
  public static final String GOVERNS = "The maker's data sheet and local rules govern.";

  private final String words;

  Caution(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
