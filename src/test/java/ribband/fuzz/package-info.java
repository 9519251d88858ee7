/**
 * Random input for all that reads what others wrote. Enters: bytes, at first those under {@code
 * src/test/resources/ribband/fuzz}, which every build replays; then, in a run that is given time,
 * what Jazzer makes of them. Leaves: nothing, as long as each class's promise holds. A class is one
 * target; an input that broke a promise once stays among the seeds.
 */
package ribband.fuzz;
