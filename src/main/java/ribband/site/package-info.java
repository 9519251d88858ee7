/**
 * Pages: what each shows, at which address. Enters: an album, its ledger and its purchases. Leaves:
 * the files of a site, each a path and its bytes, handed to a {@link ribband.site.Site.Out}. A page
 * class turns figures into a view, a record of words and shapes; the template of the same name in
 * {@code site-template/} draws it. Start at {@link ribband.site.Site}.
 */
package ribband.site;
