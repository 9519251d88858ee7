/**
 * What is wrong in a journal, as values. Enters: a place and a sentence. Leaves: {@link
 * ribband.problem.Problem}s, one line each, in the order of their places. Start at {@link
 * ribband.problem.Problems}.
 */
package ribband.problem;
