/**
 * The site while it is being written. Enters: a site's folder, what a look at the journal finds,
 * what a publish came to. Leaves: answers to a browser on this machine, each page with a script
 * that brings it up to date; on the disk nothing. Start at {@link ribband.preview.Lookout}, which
 * says when to publish, and {@link ribband.preview.Preview}, which serves.
 */
package ribband.preview;
