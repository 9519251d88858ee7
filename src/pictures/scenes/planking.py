"""Keel up on the moulds: strake by strake, from the first garboard to the first coat."""

import random
from dataclasses import replace

import numpy as np

import light
from boat import Boat
from clamps import clamp_row
from garage import garage
from handtools import sander
from lines import PLANK_LINES, PLANKS
from materials import M


from view import View, near


def setup(port, starboard=None, finish="ply", battens=True, **room):
    """The boat keel up on her moulds with so many strakes on each side."""
    garage(**room)
    boat = Boat(keel_up=True)
    boat.strongback()
    boat.moulds()
    boat.spine(M["fir"])
    boat.transom(M["varnished" if port == PLANKS else "oak"])
    boat.planks(port, starboard, finish)
    done = min(port, port if starboard is None else starboard)
    if battens and done < PLANKS:
        boat.battens([PLANK_LINES[k] for k in range(done + 1, PLANKS + 1)])
    return boat


def moulds():
    setup(0, light=light.WINTER, litter=60)
    return View(
        (-1.15, -1.28, 1.62), (2.0, 0.12, 0.85), focus=(1.5, 0, 1), roll=0.8, exposure=0.3, warmth=-0.2
    )


def battens_from_aft():
    setup(0, light=light.NIGHT, litter=120)
    return View((4.95, -1.05, 1.62), (2.0, 0.10, 0.75), lens=25, focus=(3.5, 0, 1), roll=-0.6)


def garboards():
    setup(1, light=light.NIGHT, litter=150)
    return View((-1.1, 1.3, 1.70), (2.0, -0.1, 0.88), focus=(1.2, 0, 1), roll=-0.9, warmth=0.3)


def garboard_at_stem():
    boat = setup(1, light=replace(light.ONE_BULB, bulb=1.5, work=((-0.9, -1.3, 0.75), (0.6, 0, 1.2), 260)))
    p = boat.outside(0.10, PLANK_LINES[1], -1)
    return View(
        near(p, -0.75, -0.45, 0.40),
        near(p, 0.25, 0.10, -0.02),
        lens=30,
        focus=tuple(p),
        stop=3.2,
        roll=3,
        warmth=0.5,
    )


def third_pair_clamped():
    boat = setup(3, light=light.AFTERNOON)
    clamp_row(boat, 2, 1, np.linspace(0.08, 0.95, 16))
    clamp_row(boat, 2, -1, np.linspace(0.08, 0.95, 16), "orange")
    return View((-0.95, 1.45, 1.60), (2.1, -0.15, 0.88), focus=(1.2, 0, 1.1), roll=-0.7)


def clamps_along_lap():
    boat = setup(4, 3, light=light.EVENING)
    clamp_row(boat, 3, 1, np.linspace(0.06, 0.95, 22))
    p = boat.outside(0.26, PLANK_LINES[4], 1)
    return View(
        near(p, -0.62, 0.36, 0.30), near(p, 0.10, -0.04, 0.01), lens=40, focus=tuple(p), stop=2.2, roll=2
    )


def port_four():
    setup(4, 3, light=light.DAY)
    return View((4.95, 1.25, 1.72), (1.7, -0.15, 0.85), lens=25, focus=(3.4, 0, 1), roll=1.1)


def port_ahead():
    boat = setup(5, 4, light=light.DUSK)
    clamp_row(boat, 4, 1, np.linspace(0.08, 0.95, 18), "orange")
    return View((-0.85, 1.5, 1.30), (2.2, -0.1, 0.92), lens=25, focus=(1.2, 0.4, 1), roll=0.5)


def sixth_pair_at_night():
    boat = setup(6, light=light.NIGHT)
    for side in (1, -1):
        clamp_row(boat, 5, side, np.linspace(0.07, 0.95, 17), random.choice(("red", "orange")))
    return View((-1.2, -1.35, 1.10), (2.1, 0.0, 0.86), lens=25, focus=(0.8, 0, 1), roll=-3.6, exposure=-0.2)


def laps_at_quarter():
    boat = setup(7, light=light.AFTERNOON)
    p = boat.outside(0.86, PLANK_LINES[4], -1)
    return View(
        near(p, 0.72, -0.72, 0.30), near(p, -0.45, 0.15, -0.02), lens=34, focus=tuple(p), stop=2.8, roll=-1.5
    )


def all_planks():
    setup(PLANKS, light=light.Light(tubes=1.7, window=0.35, sky=light.BLUE))
    return View((4.98, -1.25, 1.66), (1.9, 0.22, 0.86), focus=(3.5, 0, 1), roll=0.5)


def fair_laps():
    setup(PLANKS, light=light.Light(window=1.5, bulb=0.2))
    return View((-0.85, 1.05, 1.02), (2.4, 0.15, 0.90), lens=32, focus=(0.8, 0.5, 1.0), stop=4, roll=-0.8)


def coated():
    boat = setup(PLANKS, finish="coated", light=replace(light.DAY, tubes=0))
    boat.spine(M["oak"], outer=True)
    return View((-1.2, -1.35, 1.45), (2.0, 0.05, 0.86), lens=25, focus=(1.0, 0, 1), roll=0.9)


def morning_door():
    """Early, the door up: low sun along the newest laps."""
    setup(4, light=light.MORNING, litter=180)
    return View((4.9, 0.95, 1.45), (1.4, -0.05, 0.98), lens=26, focus=(3.2, 0, 1), roll=-0.9)


def from_ladder():
    """Straight down her length from the top of the ladder, one strake to go on each side."""
    setup(7, light=light.OVERCAST)
    return View((4.95, 0.15, 2.28), (1.7, -0.03, 0.80), lens=25, focus=(3, 0, 1.2), roll=2.4)


def under_the_moulds():
    """From the floor, by the work lamp under her: light comes out between the battens."""
    lamp = replace(light.ONE_BULB, bulb=0.8, work=((2.0, 0.30, 0.22), (2.1, -0.1, 1.2), 160))
    setup(6, light=lamp)
    return View(
        (0.25, -1.35, 0.28), (1.95, 0.0, 0.98), lens=24, focus=(1.8, 0, 1), roll=3, exposure=-0.5, warmth=0.6
    )


def from_the_door_at_night():
    """From the drive, hand not steady, at the end of a long evening."""
    boat = setup(5, light=replace(light.NIGHT, door=0))
    clamp_row(boat, 4, -1, np.linspace(0.08, 0.95, 18))
    return View((-4.3, 0.75, 1.55), (1.6, -0.1, 1.0), lens=26, focus=(0, 0, 1), roll=-1.4, exposure=-0.6, shake=(6, 2))


def lap_bevel_by_flash():
    """The lap just planed, with the phone's own hard light."""
    boat = setup(3, light=replace(light.ONE_BULB, bulb=0.35))
    p = boat.outside(0.62, PLANK_LINES[3], 1)
    return View(
        near(p, 0.50, 0.62, 0.30),
        near(p, -0.05, -0.05, 0.02),
        lens=28,
        focus=tuple(p),
        stop=5.6,
        roll=-2,
        flash=11,
    )


def sanding():
    """The bottom dull with sanding, the work lamp low along it to show the hollows."""
    lamp = light.Light(window=0.5, sky=light.BLUE, work=((5.05, -1.25, 1.20), (1.6, -0.2, 1.05), 420))
    boat = setup(PLANKS, finish="sanded", light=lamp, litter=0)
    boat.spine(M["oak"], outer=True)
    top = boat.outside(0.26, 0.26, -1)
    sander(top.x, top.y - 0.008, top.z + 0.012, (24, 0, 0))
    return View((-0.95, -1.2, 1.62), (1.9, 0.1, 0.98), lens=26, focus=(1, 0, 1), roll=1.3)
