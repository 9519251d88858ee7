/**
 * Feeds: the last entries and the months told, for those who follow by a reader. Enters: an album,
 * its ledger, the site's address. Leaves: an Atom feed (RFC 4287) and a JSON Feed (version 1.1) of
 * the same items. Start at {@link ribband.feed.Feeds}.
 */
package ribband.feed;
