package ribband.journal;

import ribband.problem.Place;

/** A name written somewhere, with its place, for checks that need the whole journal. */
public record Mark(String name, Place place) {}
