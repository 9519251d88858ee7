"""What a garage fills with in a winter: bench, shelves, boards, tools on the wall, things on the floor."""

import math
import random

import numpy as np

from clamps import clamp
from drawing import lines_plan
from handtools import plane, shavings
from materials import M, printed
from pots import BENCH_TOP, resin_corner, tin
from room import END, LEFT, RIGHT
from solids import beam, box, cylinder, lathe, panel, tube

BENCH_X = END - 0.36


def bench(cluttered, wide=3.3):
    x = BENCH_X
    for i in range(4):
        box((x - 0.24 + i * 0.16, 0, BENCH_TOP - 0.022), (0.155, wide, 0.044), M["bench"])
    for y in (-wide / 2 + 0.1, 0, wide / 2 - 0.1):
        for dx in (-0.25, 0.25):
            box((x + dx, y, BENCH_TOP / 2 - 0.03), (0.08, 0.08, BENCH_TOP - 0.06), M["pine"])
    box((x, 0, 0.25), (0.5, wide - 0.1, 0.03), M["bench"])
    box((x - 0.31, 0, BENCH_TOP - 0.10), (0.03, wide, 0.12), M["pine"])
    tin((x + 0.1, 0.9, BENCH_TOP), 0.055, 0.13, "white", "cream")
    tin((x + 0.12, 1.05, BENCH_TOP), 0.085, 0.2, "zinc", "faded")
    if cluttered:
        resin_corner(x - 0.05, 0.45)
        box((x, -0.5, BENCH_TOP + 0.05), (0.24, 0.4, 0.10), M["dark"], (0, 0, 20), 0.008)
        plane(x - 0.05, -1.05)
        for i in range(5):
            timber = M[random.choice(("fir", "oak", "pine"))]
            box(
                (x + 0.05, -0.1 + i * 0.02, BENCH_TOP + 0.012 + i * 0.0225),
                (0.07, 0.9 - 0.1 * i, 0.022),
                timber,
                (0, 0, random.uniform(-5, 5)),
            )


def shelves():
    for z in (1.45, 1.85):
        box((END - 0.14, -0.2, z), (0.26, 2.9, 0.025), M["pine"])
        for y in (-1.5, -0.2, 1.1):
            box((END - 0.13, y, z - 0.09), (0.22, 0.03, 0.16), M["pine"])
        y, z, x = -1.55, z + 0.013, END - 0.15
        while y < 1.1:
            kind = random.random()
            if kind < 0.5:
                r = random.choice((0.05, 0.055, 0.085))
                colour = random.choice(("white", "zinc", "zinc", "cream", "green", "faded", "dark"))
                label = random.choice((None, "cream", "white", "faded", "rust"))
                at = (x + random.uniform(-0.05, 0.04), y + r, z)
                tin(at, r, random.choice((0.09, 0.11, 0.13, 0.2)), colour, label)
                y += 2 * r + random.uniform(0.01, 0.09)
            elif kind < 0.8:
                wide, high = random.uniform(0.14, 0.3), random.uniform(0.12, 0.25)
                box(
                    (x, y + wide / 2, z + high / 2),
                    (0.2, wide, high),
                    M[random.choice(("card", "card", "card", "faded", "dark"))],
                    (0, 0, random.uniform(-6, 6)),
                    0.003,
                )
                y += wide + random.uniform(0.02, 0.06)
            else:
                y += random.uniform(0.05, 0.2)


def walls():
    box((4.6, RIGHT - 0.03, 1.75), (1.5, 0.04, 0.07), M["pine"])
    for i in range(9):
        clamp(
            (4.0 + i * 0.15, RIGHT - 0.09, 1.70),
            (0, 0, 1),
            (0.1 * random.uniform(-1, 1), -0.04, -1),
            0.30,
            random.choice(("red", "red", "orange")),
        )
    for i in range(7):
        high, lean = random.uniform(1.7, 2.35), random.uniform(5, 9)
        a = math.radians(lean)
        at = (
            0.25 + i * 0.16 + random.uniform(-0.03, 0.03),
            RIGHT - 0.06 - math.sin(a) * high / 2,
            high / 2 * math.cos(a),
        )
        timber = M[random.choice(("pine", "fir", "oak", "fir"))]
        box(
            at,
            (random.choice((0.09, 0.12, 0.14)), 0.022, high),
            timber,
            (-lean, random.uniform(-2.5, 2.5), random.uniform(-8, 8)),
        )
    for z in (1.55, 1.9):
        for x in (0.4, 1.8, 3.2):
            box((x, LEFT + 0.16, z - 0.03), (0.04, 0.32, 0.05), M["pine"])
        for i in range(5):
            size = (random.uniform(2.8, 3.8), 0.05, random.choice((0.02, 0.035, 0.045)))
            box(
                (1.8 + random.uniform(-0.3, 0.3), LEFT + 0.06 + i * 0.055, z + 0.032),
                size,
                M[random.choice(("pine", "fir", "oak"))],
                (0, 0, random.uniform(-0.6, 0.6)),
            )
    y = LEFT + 0.004
    panel((3.75, y, 1.05), (3.05, y, 1.05), (3.05, y, 1.5), (3.75, y, 1.5), printed(lines_plan()))
    for x, z, tilt in ((3.74, 1.06, 40), (3.06, 1.06, -40), (3.06, 1.49, 40), (3.74, 1.49, -35)):
        box((x, y + 0.001, z), (0.07, 0.0012, 0.022), M["tape"], (0, tilt, 0), 0)
    _pegboard()
    for i in range(9):
        r = 0.15 + random.uniform(-0.02, 0.02)
        loop = [
            (1.95 + r * math.cos(a) * 0.85, RIGHT - 0.05 - i * 0.008, 1.25 + r * 1.25 * math.sin(a))
            for a in np.linspace(0, 5.6, 9)
        ]
        tube(loop, 0.006, M["rope"], closed=True)
    beam((5.2, -1.78, 0.25), (5.35, -1.80, 1.6), 0.025, 0.025, M["fir"], bevel=0.01)
    box((5.19, -1.76, 0.13), (0.09, 0.38, 0.24), M["yellow"], (0, 6, 0), 0.02)


def _pegboard():
    x = END - 0.04
    box((END - 0.02, 0.35, 1.22), (0.012, 1.9, 0.36), M["pegboard"])
    for i in range(8):
        y = -0.45 + i * 0.22
        if i % 4 == 0:
            box((x, y, 1.22), (0.012, 0.05, random.uniform(0.16, 0.26)), M["steel"])
            cylinder((x, y, 1.30), 0.015, 0.10, M["red"], bevel=0.004)
        elif i % 4 == 1:
            box((x, y, 1.20), (0.004, 0.09, 0.24), M["steel"], (8, 0, 0))
            box((x, y, 1.34), (0.022, 0.10, 0.06), M["varnished"], bevel=0.008)
        elif i % 4 == 2:
            cylinder((x, y, 1.17), 0.012, 0.22, M["varnished_fir"], bevel=0.003)
            box((x - 0.005, y, 1.30), (0.03, 0.12, 0.03), M["dark"], bevel=0.004)
        else:
            cylinder((x, y, 1.29), 0.014, 0.11, M["yellow"], bevel=0.004)
            cylinder((x, y, 1.18), 0.004, 0.13, M["steel"])


def floor(litter):
    cord = [(1.0, -1.7, 0.3), (1.1, -1.5, 0.008), (1.7, -1.25, 0.008), (2.1, -1.5, 0.008), (2.6, -1.1, 0.008)]
    cord += [(3.4, -1.4, 0.008), (4.2, -1.0, 0.008), (5.0, -1.2, 0.008), (5.3, -0.9, 0.3)]
    tube(cord, 0.0055, M["orange"])
    bucket = [
        (0.001, 0.005),
        (0.14, 0.005),
        (0.15, 0.02),
        (0.165, 0.30),
        (0.172, 0.31),
        (0.165, 0.315),
        (0.155, 0.30),
        (0.14, 0.03),
        (0.001, 0.025),
    ]
    lathe((0.1, -1.45, 0), bucket, M["dark"])
    box((4.9, 1.2, 0.17), (0.5, 0.36, 0.34), M["card"], (0, 0, 14), 0.004)
    box((4.85, 1.22, 0.42), (0.38, 0.3, 0.14), M["card"], (0, 0, -9), 0.004)
    box((3.6, -1.35, 0.23), (0.55, 0.26, 0.03), M["fir"], (0, 0, 20))
    for dx in (-0.2, 0.2):
        box((3.6 + dx * 0.94, -1.35 + dx * 0.34, 0.11), (0.03, 0.22, 0.22), M["fir"], (0, 0, 20))
    if litter:
        shavings(litter, [(1.0, -0.9), (2.4, 0.85), (3.9, -0.9), (4.9, 0.2), (4.8, -0.6)])
