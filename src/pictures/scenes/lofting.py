"""Lofting: her lines full size on two painted sheets on the floor, by battens and weights."""

from dataclasses import replace

import numpy as np
from mathutils import Vector

import light
from clutter import BENCH_X
from drawing import LOFT_LENGTH, LOFT_WIDTH, lines_plan, loft
from garage import garage
from handtools import bevel_gauge, pencil, steel_square, weight
from lines import PLANK_LINES, hull
from materials import M, printed
from pots import BENCH_TOP
from room import LEFT
from solids import beam, box, panel, sweep
from view import View

FORE, BASE, TOP = 0.35, -0.50, 0.021  # where her stem and base line lie in the room; the face of the boards


def on_loft(x, y, up=0.0):
    """A drawn point, metres aft of the stem and off the base line, in the room."""
    return Vector((FORE + x, BASE + y, TOP + up))


def boards(room_light):
    garage(room_light, litter=30)
    x, y = FORE - 0.075, BASE - 0.12
    for i in (0, 1):
        middle = (x + LOFT_LENGTH * (0.25 + 0.5 * i), y + LOFT_WIDTH / 2, 0.010 + 0.0004 * i)
        box(middle, (LOFT_LENGTH / 2 - 0.002, LOFT_WIDTH, 0.018), M["mould"])
    far, wide = x + LOFT_LENGTH, y + LOFT_WIDTH
    z = TOP - 0.0008
    panel((x, y, z), (far, y, z), (far, wide, z), (x, wide, z), printed(loft()))


def batten(u, first=0.0, last=1.0, weights=7):
    """A batten sprung along the half-breadth of the line u, with weights on its inner side."""
    path = [on_loft(hull(t, u).x, hull(t, u).y, 0.009) for t in np.linspace(first, last, 60)]
    sweep(path, 0.013, 0.018, M["fir"], [Vector((0, 0, 1))] * len(path))
    for i, t in enumerate(np.linspace(first + 0.06, last - 0.06, weights)):
        p = hull(t, u)
        weight(*on_loft(p.x, p.y, 0.0), turn=-90 + (17 * i) % 30 - 15)


def loft_by_lamp():
    boards(replace(light.ONE_BULB, bulb=0.7, work=((4.6, 0.9, 0.32), (2.2, -0.1, 0.0), 260)))
    batten(PLANK_LINES[8], 0.02, 1.0, 9)
    pencil(*on_loft(0.75, 0.12), turn=30, colour="yellow")
    steel_square(*on_loft(1.2, 0.1), turn=8)
    return View(
        (-0.35, -0.95, 0.95),
        (2.2, 0.0, 0.0),
        lens=25,
        focus=(1.2, -0.3, 0),
        roll=-1.2,
        exposure=0.1,
        warmth=0.5,
    )


def loft_from_ladder():
    boards(light.OVERCAST)
    batten(PLANK_LINES[5], 0.0, 1.0, 8)
    box((1.0, 1.25, 0.16), (0.4, 0.32, 0.30), M["card"], (0, 0, 12), 0.004)
    return View((5.0, 0.5, 2.25), (2.2, 0.05, 0.0), lens=25, focus=(3, 0, 0), roll=1.5)


def batten_and_weights():
    boards(light.AFTERNOON)
    batten(PLANK_LINES[8], 0.2, 0.95, 8)
    p = on_loft(2.2, hull(0.45, 1).y)
    pencil(p.x - 0.12, p.y + 0.05, TOP, 12, "red")
    return View(
        (p.x - 0.75, p.y + 0.30, 0.42),
        (p.x + 0.15, p.y - 0.08, 0.02),
        lens=34,
        focus=tuple(p),
        stop=2.8,
        roll=-2,
    )


def body_plan():
    boards(replace(light.ONE_BULB, bulb=1.4, tubes=0.8))
    c = on_loft(2.30, 0.3)
    bevel_gauge(c.x + 0.18, c.y - 0.20, TOP, 40, 62)
    pencil(c.x - 0.34, c.y - 0.16, TOP, -35, "yellow")
    steel_square(c.x - 0.62, c.y - 0.42, TOP, 2)
    path = [on_loft(2.30 + hull(0.25, u).y, hull(0.25, u).z + 0.02, 0.006) for u in np.linspace(0, 1, 30)]
    sweep(path, 0.008, 0.012, M["pine"], [Vector((0, 0, 1))] * len(path))
    return View(
        (c.x - 0.35, c.y - 0.95, 1.15), (c.x + 0.02, c.y + 0.06, 0.0), lens=30, focus=tuple(c), stop=5, roll=4, exposure=0.45
    )


def plan_on_wall():
    """The sheet between the racks, in the lamp's light."""
    garage(light.Light(bulb=1.8, tubes=0.3))
    return View((3.02, -0.95, 1.36), (3.44, LEFT, 1.27), lens=30, stop=4, roll=-2.5, warmth=0.4)


def offsets_on_bench():
    """The offsets once more on the bench, with what is needed to lay them down."""
    garage(light.EVENING, bench=False)
    x, y, z = BENCH_X - 0.08, -0.30, BENCH_TOP + 0.002
    panel(
        (x + 0.26, y - 0.4, z),
        (x + 0.25, y + 0.44, z),
        (x - 0.28, y + 0.42, z),
        (x - 0.27, y - 0.41, z),
        printed(lines_plan()),
    )
    for i in range(3):
        weight(x + 0.10 - 0.02 * i, y + 0.52 + 0.09 * i, BENCH_TOP, 100 + 25 * i)
    beam((x - 0.20, y - 0.25, z + 0.006), (x - 0.14, y + 0.55, z + 0.006), 0.012, 0.012, M["fir"])
    pencil(x - 0.05, y + 0.05, z, 70, "yellow")
    steel_square(x - 0.02, y - 0.22, z, 75)
    bevel_gauge(x - 0.24, y + 0.2, z, 100, 40)
    return View(
        (x - 0.50, y + 0.45, BENCH_TOP + 0.40),
        (x + 0.03, y + 0.02, BENCH_TOP),
        lens=30,
        focus=(x, y, z),
        stop=3.5,
        roll=3,
    )
