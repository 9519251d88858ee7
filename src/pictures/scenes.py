"""What stands before the camera in each picture. Each function lays one scene and returns its View."""

import random
from dataclasses import dataclass

import numpy as np

from boat import Boat
from garage import garage
from lines import PLANK_LINES, PLANKS, hull
from materials import M
from tools import clamp, clamp_row

NIGHT = dict(door=0, window=0, tubes=2.4, lamp=1.2)
DAY = dict(door=5.0)


@dataclass
class View:
    """How the phone is held.

    place, target, focus: metres in the room. lens: full-frame focal length in mm. stop: f-number, 0 for
    all sharp. roll: degrees. exposure: stops.
    """

    place: tuple
    target: tuple
    lens: float = 24
    focus: tuple = None
    stop: float = 5.6
    roll: float = 0
    exposure: float = 0


def setup(port, starboard=None, finish="ply", **room):
    """The boat keel up on her moulds with so many strakes on each side."""
    garage(**room)
    boat = Boat(keel_up=True)
    boat.strongback()
    boat.moulds()
    boat.spine(M["fir"])
    boat.transom(M["varnished" if port == PLANKS else "oak"])
    boat.planks(port, starboard, finish)
    done = min(port, port if starboard is None else starboard)
    if done < PLANKS:
        boat.battens([PLANK_LINES[k] for k in range(done + 1, PLANKS + 1)])
    return boat


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


def near(p, dx, dy, dz):
    return p.x + dx, p.y + dy, p.z + dz


# On the moulds -------------------------------------------------------------------------------------


def moulds():
    setup(0, **DAY)
    return View((-1.15, -1.28, 1.62), (2.0, 0.12, 0.85), focus=(1.5, 0, 1), roll=0.8)


def battens_from_aft():
    setup(0, **NIGHT)
    return View((4.95, -1.05, 1.62), (2.0, 0.10, 0.75), lens=25, focus=(3.5, 0, 1), roll=-0.6, exposure=0.3)


def garboards():
    setup(1, **NIGHT)
    return View((-1.1, 1.3, 1.70), (2.0, -0.1, 0.88), focus=(1.2, 0, 1), roll=-0.9, exposure=0.3)


def garboard_at_stem():
    boat = setup(1, **NIGHT)
    p = boat.outside(0.10, PLANK_LINES[1], -1)
    return View(
        near(p, -0.75, -0.45, 0.40),
        near(p, 0.25, 0.10, -0.02),
        lens=30,
        focus=tuple(p),
        stop=3.2,
        roll=3,
        exposure=0.3,
    )


def third_pair_clamped():
    boat = setup(3, door=4.0)
    clamp_row(boat, 2, 1, np.linspace(0.08, 0.95, 16))
    clamp_row(boat, 2, -1, np.linspace(0.08, 0.95, 16), "orange")
    return View((-0.95, 1.45, 1.60), (2.1, -0.15, 0.88), focus=(1.2, 0, 1.1), roll=-0.7)


def clamps_along_lap():
    boat = setup(4, 3, door=5.0)
    clamp_row(boat, 3, 1, np.linspace(0.06, 0.95, 22))
    p = boat.outside(0.26, PLANK_LINES[4], 1)
    return View(
        near(p, -0.62, 0.36, 0.30), near(p, 0.10, -0.04, 0.01), lens=40, focus=tuple(p), stop=2.2, roll=2
    )


def port_four():
    setup(4, 3, door=7.0, lamp=0)
    return View((4.95, 1.25, 1.72), (1.7, -0.15, 0.85), lens=25, focus=(3.4, 0, 1), roll=1.1)


def port_ahead():
    boat = setup(5, 4, door=3.0, window=0.6)
    clamp_row(boat, 4, 1, np.linspace(0.08, 0.95, 18), "orange")
    return View((-0.85, 1.5, 1.30), (2.2, -0.1, 0.92), lens=25, focus=(1.2, 0.4, 1), roll=0.5)


def sixth_pair_at_night():
    boat = setup(6, **NIGHT)
    for side in (1, -1):
        clamp_row(boat, 5, side, np.linspace(0.07, 0.95, 17), random.choice(("red", "orange")))
    return View((-1.2, -1.35, 1.10), (2.1, 0.0, 0.86), lens=25, focus=(0.8, 0, 1), roll=-1.2, exposure=0.5)


def laps_at_quarter():
    boat = setup(7, door=5.0)
    p = boat.outside(0.86, PLANK_LINES[4], -1)
    return View(
        near(p, 0.72, -0.72, 0.30), near(p, -0.45, 0.15, -0.02), lens=34, focus=tuple(p), stop=2.8, roll=-1.5
    )


def all_planks():
    setup(PLANKS, door=0, lamp=0, tubes=1.7, window=0.5)
    return View((4.98, -1.25, 1.66), (1.9, 0.22, 0.86), focus=(3.5, 0, 1), roll=0.5, exposure=0.25)


def fair_laps():
    setup(PLANKS, door=1.6, window=1.4, tubes=0.5, lamp=0)
    return View(
        (-0.85, 1.05, 1.02),
        (2.4, 0.15, 0.90),
        lens=32,
        focus=(0.8, 0.5, 1.0),
        stop=4,
        roll=-0.8,
        exposure=0.15,
    )


def coated():
    boat = setup(PLANKS, finish="coated", door=6.0, lamp=0)
    boat.spine(M["oak"], outer=True)
    return View((-1.2, -1.35, 1.45), (2.0, 0.05, 0.86), lens=25, focus=(1.0, 0, 1), roll=0.9)


# Right way up --------------------------------------------------------------------------------------


def turned():
    upright(rails=False, door=7.0)
    return View((-0.95, -1.2, 1.72), (2.2, 0.1, 0.72), focus=(1.2, 0, 0.9))


def bilge():
    upright(rails=False, window=1.4, door=3.0).floor_timbers()
    return View((4.92, 0.25, 1.86), (2.0, -0.02, 0.55), lens=25, focus=(3.2, 0, 0.8), roll=-1, exposure=0.2)


def thwarts():
    upright(rails=False, door=4.0).thwarts("fir", knees=False)
    return View(
        (-0.55, 0.75, 1.86), (2.1, -0.05, 0.70), lens=25, focus=(1.5, 0, 0.9), roll=1.0, exposure=0.15
    )


def knee():
    upright(door=2.0, window=1.6).thwarts("fir")
    x = hull(0.56, 0.6).x
    return View(
        (x - 0.62, -0.10, 1.40),
        (x + 0.02, 0.56, 1.02),
        lens=32,
        focus=(x, 0.55, 1.0),
        stop=2.8,
        roll=-3,
        exposure=0.2,
    )


def rails_on():
    boat = upright(door=3.0, tubes=1.4)
    boat.thwarts("fir")
    for side in (1, -1):
        for t in np.linspace(0.08, 0.95, 14):
            p = boat.outside(t, 1.0, side)
            clamp(
                (p.x, p.y, p.z + 0.02),
                (random.uniform(-0.1, 0.1), 0, 1),
                (0, side, 0.05),
                0.24,
                random.choice(("red", "orange")),
            )
    return View((4.9, 1.1, 1.55), (1.9, -0.1, 0.95), lens=25, focus=(3.2, 0.3, 1.1), roll=-0.5, exposure=0.1)


def painted_inside_out():
    boat = upright("paint", "varnished", door=8.0)
    boat.floorboards()
    boat.thwarts()
    return View((-1.2, 1.25, 1.35), (2.1, -0.12, 0.80), lens=26, focus=(0.8, 0, 0.9), roll=0.6)


def thwart_varnish():
    boat = upright("paint", "varnished", door=5.0, window=1.2)
    boat.floorboards()
    boat.thwarts()
    return View((4.9, -0.35, 1.62), (2.3, 0.05, 0.80), lens=28, focus=(3.0, 0, 0.95), roll=1.4, exposure=0.05)


# Keel up again, for paint --------------------------------------------------------------------------


def keel_up_on_horses(finish, **room):
    garage(**room)
    boat = Boat(keel_up=True, height=1.32)
    boat.planks(PLANKS, finish=finish)
    boat.spine(M[finish], outer=True)
    boat.transom(M[finish])
    boat.sawhorses()
    return boat


def primed():
    keel_up_on_horses("primer", door=5.0, lamp=0)
    return View((-1.15, 1.35, 1.55), (2.0, -0.05, 0.90), lens=25, focus=(1.0, 0, 1), roll=-0.8)


def wet_paint():
    keel_up_on_horses("paint", **NIGHT)
    return View((-1.15, -1.35, 1.60), (2.0, 0.05, 0.90), lens=25, focus=(1.0, 0, 1), roll=0.7, exposure=0.35)
