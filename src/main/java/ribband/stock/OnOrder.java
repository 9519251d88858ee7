package ribband.stock;

import java.time.LocalDate;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.measure.Quantity;

/**
 * Bought, and not there yet.
 *
 * @param arrives the day it is in stock
 */
public record OnOrder(Entry entry, Outlay outlay, Quantity amount, LocalDate arrives) {}
