package ribband.ledger;

import ribband.journal.Phase;
import ribband.measure.Hours;
import ribband.measure.Money;

/**
 * One phase's figures.
 *
 * @param sessions entries with hours in the phase
 * @param hours carried work included where it is counted
 * @param cost likewise
 */
public record PhaseRow(Phase phase, int sessions, Hours hours, Money cost) {}
