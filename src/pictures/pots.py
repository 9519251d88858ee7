"""Tins, cups, jugs, brushes, and what is spilled from them."""

import math
import random

import numpy as np
from mathutils import Vector

from materials import M
from solids import beam, box, cylinder, lathe, mesh

BENCH_TOP = 0.90


def tin(foot, radius, height, colour, label=None):
    """A tin with its lid; `label`: the colour of a paper band round it."""
    x, y, z = foot
    cylinder((x, y, z + height / 2), radius, height, M[colour], bevel=0.002)
    if label:
        cylinder((x, y, z + height * 0.48), radius * 1.006, height * 0.55, M[label], bevel=0)
    cylinder((x, y, z + height + 0.003), radius * 0.98, 0.008, M["zinc"], bevel=0.002)
    for at in (height * 0.98, 0.004):
        cylinder((x, y, z + at), radius * 1.015, 0.008, M["zinc"])


def cup(x, y, z, radius, height, fill=0.0, stuff="resin", stick=0.0):
    """A mixing cup filled to a share of its height, with a stirring stick leaning by `stick`."""
    foot = radius * 0.78
    wall = [(0.001, 0.002), (foot, 0.002), (radius, height), (radius + 0.002, height + 0.001)]
    wall += [(radius - 0.0015, height), (foot - 0.0015, 0.004), (0.001, 0.004)]
    lathe((x, y, z), wall, M["plastic"])
    if fill:
        top = foot + (radius - foot) * fill - 0.002
        level = height * fill
        lathe(
            (x, y, z),
            [
                (0.001, 0.004),
                (foot - 0.002, 0.004),
                (top, level),
                (top * 0.8, level - 0.002),
                (0.001, level - 0.002),
            ],
            M[stuff],
        )
    if stick:
        beam(
            (x - 0.02, y, z + 0.006),
            (x + radius * 1.3, y + stick, z + height + 0.07),
            0.016,
            0.0018,
            M["pine"],
            bevel=0.0004,
        )


def brush(x, y, z, turn=0.0):
    a, b = Vector((math.cos(turn), math.sin(turn), 0)), Vector((x, y, z + 0.012))
    beam(b, b + a * 0.16, 0.018, 0.012, M["varnished_fir"], bevel=0.005)
    beam(b - a * 0.035, b, 0.028, 0.015, M["steel"])
    beam(b - a * 0.08 + Vector((0, 0, -0.002)), b - a * 0.035, 0.028, 0.011, M["dark"])


def jug(x, y, z, colour, label):
    """A resin jug with its pump."""
    profile = [
        (0.001, 0.001),
        (0.060, 0.002),
        (0.066, 0.012),
        (0.066, 0.17),
        (0.05, 0.20),
        (0.022, 0.215),
        (0.022, 0.235),
        (0.001, 0.235),
    ]
    lathe((x, y, z), profile, M[colour])
    cylinder((x, y, z + 0.245), 0.024, 0.03, M["dark"])
    cylinder((x, y, z + 0.29), 0.006, 0.07, M["white"])
    box((x - 0.02, y, z + 0.33), (0.07, 0.025, 0.018), M["white"], (0, 0, 30), 0.006)
    angles = np.linspace(2.2, 4.4, 14)
    wrap = [(x + 0.0665 * math.cos(a), y + 0.0665 * math.sin(a), z + h) for h in (0.04, 0.14) for a in angles]
    mesh(wrap, [(i, i + 1, 15 + i, 14 + i) for i in range(13)], M[label], smooth=True)


def spill(x, y, z, size, stuff="resin"):
    """What ran down the cup: a flat puddle with a lobed edge, and a few drops thrown off it."""
    _puddle(x, y, z, size, stuff)
    for _ in range(random.randint(0, 3)):
        a, r = random.uniform(0, 6.3), size * random.uniform(1.4, 3.5)
        _puddle(x + r * math.cos(a), y + r * math.sin(a), z, size * random.uniform(0.08, 0.25), stuff)


def _puddle(x, y, z, size, stuff):
    n, lobes = 48, [(k, random.uniform(0, 0.32) / k, random.uniform(0, 6.3)) for k in range(1, 6)]
    rim = [
        1 + sum(c * math.sin(k * a + p) for k, c, p in lobes) for a in (2 * math.pi * i / n for i in range(n))
    ]
    verts = [(x, y, z + 0.0014)]
    for share, high in ((0.55, 0.0014), (0.9, 0.0011), (1.0, 0.0001)):
        for i, r in enumerate(rim):
            a = 2 * math.pi * i / n
            verts.append((x + share * r * size * math.cos(a), y + share * r * size * math.sin(a), z + high))
    faces = [(0, 1 + i, 1 + (i + 1) % n) for i in range(n)]
    for ring in (1, 1 + n):
        faces += [(ring + i, ring + n + i, ring + n + (i + 1) % n, ring + (i + 1) % n) for i in range(n)]
    mesh(verts, faces, M[stuff], smooth=True)


def resin_corner(x, y, z=BENCH_TOP):
    """Cups, sticks, drips, brush and the two jugs."""
    for dx, dy, r, h, fill, stick in (
        (0, 0, 0.042, 0.085, 0.5, -0.02),
        (0.11, 0.05, 0.042, 0.085, 0.35, 0.001),
        (-0.06, 0.13, 0.05, 0.06, 0.6, 0.02),
        (0.07, -0.12, 0.036, 0.075, 0, 0),
    ):
        cup(x + dx, y + dy, z, r, h, fill, stick=stick)
    for _ in range(9):
        spill(
            x + random.uniform(-0.16, 0.2),
            y + random.uniform(-0.22, 0.22),
            z,
            random.choice((0.004, 0.007, 0.02)),
        )
    brush(x - 0.17, y - 0.12, z, -1.1)
    jug(x + 0.20, y + 0.16, z, "plastic", "red")
    jug(x + 0.22, y + 0.02, z, "cream", "blue")
