"""Right way up on the horses: from the bare shell to knees and rails."""

import random

import numpy as np

import light
from boat import Boat
from clamps import clamp
from garage import garage
from lines import PLANKS, hull
from materials import M
from view import View, near


def upright(finish="ply", sheer=None, rails=True, **room):
    garage(**room)
    boat = Boat(keel_up=False)
    boat.planks(PLANKS, finish=finish, sheer=sheer)
    boat.spine(M["varnished"])
    boat.spine(M["oak"], outer=True)
    boat.transom(M["varnished"])
    if rails:
        boat.rails(M["varnished"])
    boat.sawhorses()
    return boat


def turned():
    upright(rails=False, light=light.AFTERNOON, litter=40)
    return View((-0.95, -1.2, 1.72), (2.2, 0.1, 0.72), focus=(1.2, 0, 0.9), roll=-0.4)


def bilge():
    upright(rails=False, light=light.OVERCAST).floor_timbers()
    return View((4.92, 0.25, 1.86), (2.0, -0.02, 0.55), lens=25, focus=(3.2, 0, 0.8), roll=-1)


def thwarts():
    upright(rails=False, light=light.EVENING).thwarts("fir", knees=False)
    return View((-0.55, 0.75, 1.86), (2.1, -0.05, 0.70), lens=25, focus=(1.5, 0, 0.9), roll=1.0)


def knee():
    upright(light=light.Light(window=1.6, bulb=0.4)).thwarts("fir")
    x = hull(0.56, 0.6).x
    return View(
        (x - 0.62, -0.10, 1.40), (x + 0.02, 0.56, 1.02), lens=32, focus=(x, 0.55, 1.0), stop=2.8, roll=-3
    )


def rails_on():
    boat = upright(light=light.OVERCAST)
    boat.thwarts("fir")
    for side in (1, -1):
        for t in np.linspace(0.08, 0.95, 14):
            p = boat.outside(t, 1.0, side)
            away = (random.uniform(-0.1, 0.1), 0, 1)
            grip = random.choice(("red", "orange"))
            clamp((p.x, p.y, p.z + 0.02), away, (0, side, 0.05), 0.24, grip)
    return View((4.9, 1.1, 1.55), (1.9, -0.1, 0.95), lens=25, focus=(3.2, 0.3, 1.1), roll=-0.5)


def evening_inside():
    """From the transom, after sunset: thwarts and knees in, the bulb behind, the door open on blue."""
    upright(light=light.DUSK, litter=60).thwarts("fir")
    return View((4.85, -0.5, 1.50), (2.2, 0.06, 0.82), lens=25, focus=(3, 0, 0.9), roll=-1.8)


def along_the_rail():
    """Eye close over the inwale, looking aft: is the sheer fair?"""
    boat = upright(light=light.MORNING, litter=60)
    boat.thwarts("fir")
    p = boat.outside(0.05, 1.0, 1)
    return View(
        near(p, -0.35, -0.03, 0.16),
        near(p, 1.6, 0.42, -0.20),
        lens=26,
        focus=near(p, 0.5, 0.2, 0),
        stop=4,
        roll=1,
    )


def shell_from_ladder():
    """The bare shell from above, moulds out, before anything is in her."""
    upright(rails=False, light=light.AFTERNOON, litter=40)
    return View((-0.6, -0.35, 2.30), (2.3, 0.04, 0.55), lens=24, focus=(1.5, 0, 0.9), roll=-2, thumb=True)
