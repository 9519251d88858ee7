"""How the phone is held for one picture."""

from dataclasses import dataclass


@dataclass
class View:
    """place, target, focus: metres in the room. lens: full-frame focal length in mm.

    stop: f-number of the blur, 0 for all sharp. roll: degrees. exposure: stops from what the phone would
    choose. warmth: how far the phone's guess at white is off, -1 blue to 1 yellow. flash: watts of the light
    beside the lens. shake: how far the picture moved while it was taken, in thousandths of its width, across
    and down. thumb: a finger lies over a corner of the lens.
    """

    place: tuple
    target: tuple
    lens: float = 24
    focus: tuple = None
    stop: float = 5.6
    roll: float = 0
    exposure: float = 0
    warmth: float = 0
    flash: float = 0
    shake: tuple = (0, 0)
    thumb: bool = False


def near(p, dx, dy, dz):
    return p[0] + dx, p[1] + dy, p[2] + dz
