"""Spars and oars."""

import math
import random

import numpy as np
from mathutils import Vector

import light
from clamps import clamp
from clutter import BENCH_X
from furniture import horses
from garage import garage
from handtools import pencil, plane, shavings, spokeshave
from materials import M
from pots import BENCH_TOP
from scenes.inside import upright
from solids import beam, cylinder, slab, sweep, tube
from view import View


def mast_on_horses():
    upright(light=light.AFTERNOON).thwarts("fir")
    y, z = -1.12, 0.93
    horses((0.5, 3.1), y, z - 0.05)
    path = [Vector((x, y, z)) for x in np.linspace(-0.55, 3.5, 12)]
    sweep(path, 0.062, 0.062, M["fir"])
    for x in np.linspace(-0.3, 3.2, 10):
        clamp(
            (x, y + 0.03, z + 0.03),
            (random.uniform(-0.1, 0.1), 0.05, 1),
            (0, 1, 0),
            0.24,
            random.choice(("red", "orange", "red")),
        )
    return View((-1.25, -1.55, 1.50), (1.6, -0.85, 0.82), lens=25, focus=(0.3, y, z), roll=-0.6, exposure=0.1)


def oars_on_bench():
    garage(light.AFTERNOON, bench=False)
    x = BENCH_X - 0.12
    for i, dx in enumerate((0.0, 0.14)):
        y = -0.15 + i * 0.06
        cylinder((x + dx, y - 0.15, BENCH_TOP + 0.03), 0.021, 1.7, M["fir"], (90, 0, 0), top=0.024)
        outline = [
            (-0.022, 0.62),
            (-0.034, 0.75),
            (-0.062, 1.0),
            (-0.066, 1.25),
            (0.066, 1.25),
            (0.062, 1.0),
            (0.034, 0.75),
            (0.022, 0.62),
        ]
        points = [Vector((x + dx + a, y + b, BENCH_TOP + 0.024)) for a, b in outline]
        slab(points, Vector((0, 0, 0.011)), M["fir"], 0.004)
    plane(x + 0.26, 0.15, turn=-12)
    shavings(170, [(x - 0.1, 0.1), (x + 0.1, 0.5), (x + 0.2, -0.2)], 0.16, BENCH_TOP + 0.002)
    return View(
        (x - 0.52, 1.50, BENCH_TOP + 0.50),
        (x + 0.06, 0.72, BENCH_TOP),
        lens=28,
        focus=(x, 0.85, BENCH_TOP + 0.03),
        stop=4,
        roll=2,
    )


def mast_eight_sided():
    """The mast from four sides to eight, close by: the flat just planed, the pencil line beside it."""
    garage(light.DUSK, bench=False, litter=200)
    y, z, n = -0.35, 0.93, 8
    horses((0.5, 2.2, 3.9), y, z - 0.07)
    ring = [
        (0.031 * math.cos(math.pi * (k + 0.5) / 4), 0.031 * math.sin(math.pi * (k + 0.5) / 4))
        for k in range(n)
    ]
    slab([Vector((0.0, y + a, z + b)) for a, b in ring], Vector((4.2, 0, 0)), M["fir"], 0.0008)
    tube([(0.0, y - 0.006, z + 0.0292), (4.1, y - 0.004, z + 0.0292)], 0.0007, M["dark"])
    plane(0.95, y, z + 0.03, turn=-88)
    shavings(90, [(0.9, y - 0.2), (1.3, y + 0.1)], 0.3)
    shavings(10, [(0.75, y)], 0.03, z + 0.03)
    return View(
        (0.42, y - 0.36, z + 0.27), (1.0, y + 0.02, z + 0.0), lens=32, focus=(0.85, y, z), stop=3.2, roll=2
    )


def rudder_and_board():
    """Daggerboard and rudder blanks on the bench, the edges half shaped."""
    garage(light.AFTERNOON, bench=False, litter=120)
    x, y, z = BENCH_X - 0.02, 0.0, BENCH_TOP
    board = [(-0.15, -0.55), (0.13, -0.55), (0.13, 0.38), (0.09, 0.43), (-0.10, 0.43), (-0.15, 0.36)]
    slab([Vector((x + a, y - 0.30 + b, z)) for a, b in board], Vector((0, 0, 0.019)), M["sanded"], 0.006)
    blade = [
        (-0.09, 0.0),
        (-0.10, 0.34),
        (-0.14, 0.52),
        (-0.08, 0.62),
        (0.09, 0.60),
        (0.12, 0.45),
        (0.10, 0.0),
    ]
    slab(
        [Vector((x - 0.03 + a, y + 0.28 + b, z)) for a, b in blade], Vector((0, 0, 0.021)), M["sanded"], 0.007
    )
    beam((x + 0.2, y + 0.1, z + 0.016), (x + 0.16, y + 0.95, z + 0.016), 0.034, 0.03, M["oak"], bevel=0.006)
    spokeshave(x - 0.16, y + 0.45, z + 0.004, 30)
    pencil(x - 0.04, y + 0.12, z, 15)
    shavings(26, [(x - 0.20, y + 0.35), (x - 0.24, y)], 0.07, z + 0.001)
    return View(
        (x - 0.66, y + 0.92, z + 0.70),
        (x - 0.02, y + 0.14, z),
        lens=28,
        focus=(x - 0.1, y + 0.2, z),
        stop=4,
        roll=-2,
    )
