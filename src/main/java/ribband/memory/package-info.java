/**
 * Values kept between runs, only ever a shortcut: without them every figure and every byte is the
 * same, later. Enters: texts under keys, and stamps of files read. Leaves: the same texts in the
 * next run, as long as the version handed in is the same and the files have not been touched. Start
 * at {@link ribband.memory.Memory}.
 */
package ribband.memory;
