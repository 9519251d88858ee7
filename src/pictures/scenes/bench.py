"""Bench and floor from close by: paper, pots, scarfs, tools."""

import math

import numpy as np
from mathutils import Vector

import light
from clamps import clamp
from clutter import BENCH_X
from drawing import lines_plan
from garage import garage
from furniture import horses
from handtools import pencil, plane, shavings
from materials import M, printed
from pots import BENCH_TOP, cup, spill, tin
from scenes.planking import setup
from solids import beam, box, cylinder, lathe, mesh, slab, sweep, tube
from view import View


def resin_pots():
    setup(2, light=light.WINTER)
    x = BENCH_X - 0.05
    return View(
        (x - 0.50, 0.16, 1.24), (x + 0.06, 0.48, 0.965), lens=42, focus=(x, 0.45, 0.97), stop=2.8, roll=1
    )


def plan_on_bench():
    garage(light.Light(window=0.8, bulb=1.6), bench=False)
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
    garage(light.Light(bulb=1.0, work=((4.3, -1.3, 1.25), (5.4, 0.1, 0.9), 120)), bench=False)
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
    return View(
        (x - 0.34, -0.30, BENCH_TOP + 0.27),
        (x + 0.01, 0.0, BENCH_TOP + 0.015),
        lens=38,
        focus=(x, -0.02, BENCH_TOP + 0.02),
        stop=3.2,
        roll=2,
    )


def plane_and_shavings():
    garage(light.AFTERNOON, bench=False)
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
    garage(light.EVENING)
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


def scarf_under_weights():
    """Film over the glue, a board on the film, two bricks and a tin of screws on the board."""
    garage(light.Light(bulb=1.8, tubes=0.8), bench=False)
    x, z = BENCH_X - 0.06, BENCH_TOP
    for i in range(4):
        box(
            (x, 0.62 - 0.006 * i, z + 0.004 + 0.008 * i), (0.13, 1.5, 0.0075), M["ply"], (0, 0, 0.4 * i - 0.6)
        )
        box(
            (x, -0.92 - 0.006 * i, z + 0.004 + 0.008 * i),
            (0.13, 1.5, 0.0075),
            M["ply"],
            (0, 0, 0.3 - 0.3 * i),
        )
    z += 0.033
    _film(x, -0.15, z)
    box((x, -0.15, z + 0.013), (0.15, 0.26, 0.018), M["mould"], (0, 0, 2))
    for i, y in enumerate((-0.215, -0.085)):
        box((x - 0.005, y, z + 0.022 + 0.034), (0.205, 0.10, 0.066), M["brick"], (0, 0, 5 - 9 * i), 0.004)
    tin((x + 0.02, -0.15, z + 0.09), 0.055, 0.11, "zinc", "rust")
    for y in (-0.42, 0.12):
        clamp((x - 0.065, y, BENCH_TOP + 0.033), (-1, 0.04, 0), (0, 0, 1), 0.24)
    for dy in (-0.30, -0.02, 0.03):
        spill(x - 0.09, dy, BENCH_TOP, 0.006)
    pencil(x - 0.20, -0.02, turn=65)
    return View(
        (x - 0.62, -0.62, z + 0.42),
        (x + 0.01, -0.14, z + 0.02),
        lens=32,
        focus=(x, -0.2, z),
        stop=3.5,
        roll=-2,
    )


def _film(x, y, z):
    """Cling film laid over the scarf, its edges crumpled."""
    n, verts = 26, []
    for i in range(n + 1):
        for j in range(n + 1):
            a, b = 2 * i / n - 1, 2 * j / n - 1
            loose = max(0, abs(a) - 0.55) + max(0, abs(b) - 0.6)
            crumple = math.sin(19 * a + 7 * b) * math.sin(5 * a - 13 * b)
            drop = 0.03 * max(0, abs(a) - 0.55) ** 1.2
            verts.append((x + 0.12 * a, y + 0.24 * b, z + 0.002 + loose * 0.02 * (1 + crumple) - drop))
    rows = range(n)
    faces = [
        tuple((i + di) * (n + 1) + j + dj for di, dj in ((0, 0), (0, 1), (1, 1), (1, 0)))
        for i in rows
        for j in rows
    ]
    mesh(verts, faces, M["film"], smooth=True)


def scarf_jig():
    """The ramp for the plane, a strake end in it, and six tries beside it."""
    garage(light.DUSK, bench=False)
    x, y, z = BENCH_X - 0.08, -0.1, BENCH_TOP
    box((x, y, z + 0.009), (0.34, 0.46, 0.018), M["mould"])
    for side in (-0.12, 0.12):
        wedge = [(-0.2, 0.018), (0.2, 0.018), (0.2, 0.018 + 0.058), (-0.2, 0.018 + 0.008)]
        slab(
            [Vector((x + side - 0.012, y + a, z + b)) for a, b in wedge],
            Vector((0.024, 0, 0)),
            M["fir"],
            0.001,
        )
    strake = [(-0.16, 0.0185), (0.02, 0.0185), (0.85, 0.0185), (0.85, 0.025), (-0.11, 0.025)]
    slab([Vector((x - 0.075, y + a, z + b)) for a, b in strake], Vector((0.15, 0, 0)), M["ply"], 0.0003)
    plane(x + 0.01, y - 0.01, z + 0.047, turn=92)
    for i in range(6):
        at = (x - 0.17 - 0.012 * i, y - 0.34 - 0.035 * i, z + 0.004 + 0.0015 * i)
        box(at, (0.05, 0.16, 0.0065), M["ply"], (0, 0, 100 + 14 * i))
    pencil(x - 0.22, y + 0.1, turn=70, colour="yellow")
    shavings(70, [(x - 0.16, y), (x, y - 0.2)], 0.07, z + 0.002)
    return View(
        (x - 0.55, y - 0.42, z + 0.42),
        (x + 0.0, y - 0.02, z + 0.02),
        lens=32,
        focus=(x - 0.1, y - 0.1, z),
        stop=3.2,
        roll=2,
    )


def planks_on_horses():
    """Four scarfed planks, sixteen feet long, across three horses beside the boat."""
    setup(4, light=light.OVERCAST)
    y, z = -1.18, 0.74
    horses((0.2, 1.9, 3.6), y, z, wide=0.6)
    for i in range(4):
        path = []
        for x in np.linspace(-0.85, 3.95, 30):
            sag = 0.012 * math.sin((x - 0.2) / 1.7 * math.pi) ** 2
            path.append(
                Vector(
                    (
                        x - 0.05 * i,
                        y + 0.05 + 0.05 * math.sin(0.65 * x + 0.2 * i),
                        z + 0.055 + 0.008 * i - sag,
                    )
                )
            )
        sweep(path, 0.155 - 0.006 * i, 0.0072, M["ply"], [Vector((0, 0, 1))] * len(path))
    for x in (1.1, 1.16):
        tube([(x, y - 0.05, z + 0.085), (x + 0.01, y + 0.14, z + 0.085)], 0.0007, M["dark"])
    return View((-1.28, -0.60, 1.62), (1.2, -1.02, 0.78), lens=25, focus=(0.2, y, z), roll=-0.8)
