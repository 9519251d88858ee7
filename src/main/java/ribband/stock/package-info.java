/**
 * Materials: bought, used, on hand, what each purchase did, what is still needed and when to order
 * it. Enters: a journal and the day that all is as of. Leaves: a shelf for each material. Start at
 * {@link ribband.stock.Stock}.
 */
package ribband.stock;
