package ribband.journal;

import java.time.LocalDate;
import java.util.Optional;
import ribband.measure.Packs;

/**
 * A thing bought; a material, or any item.
 *
 * @param what the material's name or the item in words
 * @param material the material it adds to, if it is one
 * @param amount how much of it
 * @param from who sold it
 * @param receipt journal path of the receipt, as written where there is no such file; never
 *     published
 * @param arrived in stock from this day; without it from the entry's
 */
public record Purchase(
    String what,
    Optional<String> material,
    Optional<Packs> amount,
    Optional<String> from,
    Optional<String> receipt,
    Optional<LocalDate> arrived) {}
