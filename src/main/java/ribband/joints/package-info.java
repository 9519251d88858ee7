/**
 * Joints and coats after the night they were made: when to look at the clamps for the last time,
 * when they come off, when the next coat bonds. Enters: a journal and a moment. Leaves: times, or
 * the reasons why they are unknown. Start at {@link ribband.joints.Bonds}.
 */
package ribband.joints;
