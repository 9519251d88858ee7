"""The garage as it is tonight: room, light and clutter."""

import clutter
from room import room


def garage(light, bench=True, litter=220):
    """`bench`: with tools and pots on it. `litter`: curls of wood on the floor."""
    room(light)
    light.hang()
    clutter.bench(bench)
    clutter.shelves()
    clutter.walls()
    clutter.floor(litter)
