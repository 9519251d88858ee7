/**
 * Writing a site: only what changed, whole or not at all, never over what is not its own. Enters:
 * the bytes of every file, under its path in the site. Leaves: the output folder, and in it {@code
 * site-files.txt}, the list of what the tool wrote there. Start at {@link ribband.press.Press}.
 *
 * <p>What is in the list is the tool's; anything else in the folder is not, and is neither written
 * over nor removed. So the list has to tell the truth whenever a run is killed:
 *
 * <ol>
 *   <li>Every changed file is written to the staging folder in {@code .ribband/} beside the output
 *       and brought down to the disk. The site has not been touched.
 *   <li>A foreign file, folder or link where the site needs a file ends the run here.
 *   <li>A list of the old files and the new ones together is put in place, a path with its old hash
 *       and its new one. From here on nothing the tool puts can be taken for somebody else's.
 *   <li>Each changed file is moved into place in one step: assets and pictures, then what has a new
 *       address, then what replaces an older one; in either, entry pages, other pages, feeds,
 *       tables and what a search looks at, the first page. What a page shows is there before it,
 *       and nobody who begins at the first page meets a link to what is not there yet. Then the
 *       folders' names are brought down.
 *   <li>Files that only the old list names are removed if their hash is still one listed for them,
 *       else left alone; then the folders that this left empty.
 *   <li>The folders' names are brought down, and the list of the new site alone is put in place.
 * </ol>
 *
 * <p>Killed before step 3 the old site stands. Killed later, each file is whole, old or new, and
 * the next run reads the joint list, compares every file with what it wants by hash, and does the
 * steps that are left. Nothing in {@code .ribband/} is needed for that.
 */
package ribband.press;
