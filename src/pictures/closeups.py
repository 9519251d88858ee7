"""Close-ups of bench, floor and trestles: tools, pots, paper, spars. Each function returns its View."""

import math
import random

import numpy as np
from mathutils import Vector

from drawing import lines_plan
from garage import BENCH_X, garage
from materials import M, printed
from scenes import View, setup, upright
from solids import beam, box, cylinder, lathe, mesh, slab, sweep
from tools import BENCH_TOP, brush, clamp, cup, plane, shavings, tin


def resin_pots():
    setup(2, door=2.0, window=1.0)
    x = BENCH_X - 0.05
    return View(
        (x - 0.50, 0.16, 1.24), (x + 0.06, 0.48, 0.965), lens=42, focus=(x, 0.45, 0.97), stop=2.8, roll=1
    )


def plan_on_bench():
    garage(door=3.0, lamp=1.5, bench=False)
    x, y, n = BENCH_X - 0.08, -0.62, 24
    verts, faces, uvs = [], [], []
    for i in range(n + 1):
        for j in range(n + 1):
            a, b = i / n, j / n
            wave = (
                0.0035 * math.sin(a * 5 + b * 2)
                + 0.45 * max(0, a - 0.86) ** 1.5
                + 0.42 * max(0, 0.12 - b) ** 1.5
            )
            verts.append((x + 0.26 - b * 0.46, y + 0.36 - a * 0.72, BENCH_TOP + 0.007 + wave))
    for i in range(n):
        for j in range(n):
            corners = ((i, j), (i, j + 1), (i + 1, j + 1), (i + 1, j))
            faces.append(tuple(a * (n + 1) + b for a, b in corners))
            uvs.append([(a / n, 1 - b / n) for a, b in corners])
    mesh(verts, faces, printed(lines_plan()), uvs, smooth=True)
    z = BENCH_TOP + 0.012
    beam((x - 0.05, y + 0.25, z), (x + 0.14, y + 0.06, z), 0.0075, 0.0075, M["yellow"])
    box((x - 0.16, y - 0.05, z), (0.030, 0.30, 0.0015), M["steel"], (0, 0, 7), 0.0003)
    cylinder((x + 0.2, y + 0.28, BENCH_TOP + 0.055), 0.042, 0.10, M["cream"], bevel=0.003)
    return View(
        (x - 0.42, y + 0.16, BENCH_TOP + 0.50),
        (x + 0.03, y, BENCH_TOP),
        lens=34,
        focus=(x, y, BENCH_TOP),
        stop=3.5,
        roll=-3,
    )


def scarf():
    """Two scarfed planks under clamps, a third pair laid open to show the bevel."""
    garage(door=4.0, bench=False)
    x, thick = BENCH_X - 0.04, 0.008
    slope, z = thick * 8, BENCH_TOP + 0.0185
    box((x, 0, BENCH_TOP + 0.009), (0.30, 1.1, 0.018), M["mould"])
    for i, dx in enumerate((-0.095, 0.0, 0.095)):
        gap, w = (0.0 if i < 2 else 0.05), 0.082
        lower = [(-0.5, 0), (slope / 2, 0), (-slope / 2, thick), (-0.5, thick)]
        upper = [(0.5 + gap, thick), (-slope / 2 + gap, thick), (slope / 2 + gap, 0), (0.5 + gap, 0)]
        for outline in (lower, upper):
            slab(
                [Vector((x + dx - w / 2, y, z + h)) for y, h in outline],
                Vector((w, 0, 0)),
                M["fir" if i == 1 else "pine"],
                0.0004,
            )
        if i < 2:
            y, top = -slope / 2, z + thick + 0.0004
            beam((x + dx - w / 2, y, top), (x + dx + w / 2, y, top), 0.006, 0.0016, M["resin"], bevel=0.0006)
            beam(
                (x + dx - w / 2 - 0.01, y + 0.05, top + 0.009),
                (x + dx + w / 2 + 0.01, y + 0.05, top + 0.009),
                0.035,
                0.018,
                M["pine"],
            )
    for y in (0.17, -0.20):
        clamp((x + 0.155, y, z), (1, 0.05, 0), (0, 0, 1))
    shavings(26, [(x - 0.12, -0.22), (x + 0.05, 0.3)], 0.07, z)
    return View(
        (x - 0.34, -0.30, BENCH_TOP + 0.27),
        (x + 0.01, 0.0, BENCH_TOP + 0.015),
        lens=38,
        focus=(x, -0.02, BENCH_TOP + 0.02),
        stop=3.2,
        roll=2,
    )


def plane_and_shavings():
    garage(door=5.0, window=1.3, bench=False)
    x, y = BENCH_X - 0.06, 0.55
    box((x + 0.02, y, BENCH_TOP + 0.012), (0.12, 1.5, 0.022), M["fir"], (0, 0, 2))
    plane(x - 0.02, y - 0.02, BENCH_TOP + 0.023, turn=8)
    shavings(150, [(x - 0.12, y + 0.15), (x, y - 0.3), (x + 0.05, y + 0.3)], 0.10, BENCH_TOP + 0.002)
    beam(
        (x - 0.20, y - 0.30, BENCH_TOP + 0.004),
        (x - 0.13, y - 0.14, BENCH_TOP + 0.004),
        0.0075,
        0.0075,
        M["red"],
    )
    return View(
        (x - 0.46, y - 0.34, BENCH_TOP + 0.36),
        (x + 0.02, y + 0.03, BENCH_TOP + 0.03),
        lens=36,
        focus=(x, y, BENCH_TOP + 0.04),
        stop=3.2,
        roll=-2,
    )


def burnt_cup():
    """The cup that went off by itself, carried out to the concrete by the door."""
    garage(door=6.0)
    x, y = -0.75, 0.55
    cup(x, y, 0, 0.05, 0.10, 0.85, "burnt", stick=0.01)
    for i in range(16):
        a, r = i * 2.4, 0.008 + 0.0021 * i
        bubble = [(0.001, 0.012), (0.006, 0.010), (0.009, 0.004), (0.010, 0.0)]
        lathe((x + r * math.cos(a), y + r * math.sin(a), 0.085), bubble, M["burnt"], 14)
    box((x + 0.16, y + 0.12, 0.002), (0.28, 0.20, 0.003), M["zinc"], (0, 0, 24))
    box((x + 0.26, y - 0.20, 0.006), (0.13, 0.075, 0.012), M["glove"], (0, 0, -35), 0.005)
    return View(
        (x - 0.24, y - 0.22, 0.33), (x + 0.04, y + 0.01, 0.045), lens=32, focus=(x, y, 0.07), stop=3.2, roll=4
    )


def mast_on_horses():
    upright(door=5.0).thwarts("fir")
    y, z = -1.12, 0.93
    for x in (0.5, 3.1):
        box((x, y, z - 0.09), (0.09, 0.5, 0.09), M["pine"])
        for dy in (-0.2, 0.2):
            for dx in (-1, 1):
                beam(
                    (x + dx * 0.02, y + dy, z - 0.12),
                    (x + dx * 0.2, y + dy * 1.2, 0),
                    0.038,
                    0.08,
                    M["pine"],
                    up=(0, 1, 0),
                )
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
    garage(door=4.0, window=1.3, bench=False)
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


def varnish_tins():
    garage(door=4.0, window=1.0, bench=False)
    x, y = BENCH_X - 0.06, 0.35
    box((x, y, BENCH_TOP + 0.001), (0.42, 0.55, 0.002), M["card"], (0, 0, 5))
    tin((x + 0.08, y + 0.12, BENCH_TOP + 0.002), 0.055, 0.13, "cream")
    tin((x + 0.10, y - 0.05, BENCH_TOP + 0.002), 0.055, 0.13, "green")
    cup(x - 0.06, y + 0.02, BENCH_TOP + 0.002, 0.05, 0.075, 0.5, "resin")
    brush(x - 0.03, y - 0.14, BENCH_TOP + 0.003, 2.4)
    brush(x - 0.12, y - 0.19, BENCH_TOP + 0.003, 2.0)
    box((x - 0.13, y + 0.20, BENCH_TOP + 0.02), (0.11, 0.07, 0.03), M["glove"], (0, 0, 30), 0.012)
    return View(
        (x - 0.50, y - 0.22, BENCH_TOP + 0.34),
        (x + 0.02, y, BENCH_TOP + 0.05),
        lens=38,
        focus=(x, y, BENCH_TOP + 0.06),
        stop=2.8,
        roll=-2,
    )


def sailcloth():
    garage(door=4.0, bench=False)
    x, y, n = BENCH_X - 0.06, -0.25, 30
    for fold in range(5):  # each fold a soft-edged slab, none of them square to the next
        at = (
            x + random.uniform(-0.008, 0.008),
            y + random.uniform(-0.01, 0.01),
            BENCH_TOP + 0.011 + 0.019 * fold,
        )
        box(
            at,
            (0.34 - 0.008 * fold, 0.46 - 0.01 * fold, 0.021),
            M["cloth"],
            (0, 0, random.uniform(-4, 4)),
            0.0085,
        )
    verts = []
    for i in range(n + 1):  # the last panel thrown on top, one end hanging over
        for j in range(n + 1):
            a, b = i / n, j / n
            wrinkle = 0.005 * math.sin(7 * a + 2 * b) * math.sin(6 * b + 1) + 0.002 * math.sin(
                19 * a + 13 * b
            )
            hang = 0.10 * max(0, (a - 0.78) / 0.22) ** 1.5
            verts.append(
                (x + (b - 0.45) * 0.30 + 0.03 * a, y + (a - 0.36) * 0.56, BENCH_TOP + 0.112 + wrinkle - hang)
            )
    faces = [
        (i * (n + 1) + j, i * (n + 1) + j + 1, (i + 1) * (n + 1) + j + 1, (i + 1) * (n + 1) + j)
        for i in range(n)
        for j in range(n)
    ]
    mesh(verts, faces, M["cloth"], smooth=True)
    for i in range(3):
        cylinder(
            (x - 0.12, y + 0.34 + 0.05 * i, BENCH_TOP + 0.02),
            0.018,
            0.04,
            M[("white", "cream", "rope")[i]],
            bevel=0.003,
        )
    box((x - 0.10, y - 0.30, BENCH_TOP + 0.004), (0.09, 0.03, 0.004), M["steel"], (0, 0, 30))
    return View(
        (x - 0.48, y + 0.34, BENCH_TOP + 0.42),
        (x, y + 0.02, BENCH_TOP + 0.04),
        lens=34,
        focus=(x, y, BENCH_TOP + 0.09),
        stop=3.5,
        roll=2,
    )
