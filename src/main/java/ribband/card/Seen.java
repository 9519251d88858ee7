package ribband.card;

/** What a look at one file gave. */
sealed interface Seen permits Shot, LeftOut {}
