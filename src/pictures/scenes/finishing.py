"""Paint and varnish, keel up and right way up."""

import math
import random

import numpy as np
from mathutils import Vector

import light
from boat import Boat
from clutter import BENCH_X
from garage import garage
from lines import PLANKS
from materials import M
from pots import BENCH_TOP, brush, cup, tin
from scenes.inside import upright
from solids import box, cylinder, mesh, sweep
from view import View, near


def keel_up_on_horses(finish, **room):
    garage(**room)
    boat = Boat(keel_up=True, height=1.32)
    boat.planks(PLANKS, finish=finish, sheer="ply")
    boat.spine(M[finish])
    boat.spine(M[finish], outer=True)
    boat.rails(M["fir"])
    boat.transom(M[finish])
    boat.sawhorses()
    return boat


def primed():
    keel_up_on_horses("primer", light=light.OVERCAST, litter=0)
    return View((-1.15, 1.35, 1.55), (2.0, -0.05, 0.90), lens=25, focus=(1.0, 0, 1), roll=-0.8, warmth=-0.2)


def wet_paint():
    keel_up_on_horses("paint", light=light.NIGHT, litter=0)
    return View((-1.15, -1.35, 1.60), (2.0, 0.05, 0.90), lens=25, focus=(1.0, 0, 1), roll=0.7)


def painted_inside_out():
    boat = upright("paint", "varnished", light=light.MORNING, litter=0)
    boat.floorboards()
    boat.thwarts()
    return View((-1.2, 1.25, 1.35), (2.1, -0.12, 0.80), lens=26, focus=(0.8, 0, 0.9), roll=0.6)


def thwart_varnish():
    boat = upright("paint", "varnished", light=light.MORNING, litter=0)
    boat.floorboards()
    boat.thwarts()
    return View((4.9, -0.35, 1.62), (2.3, 0.05, 0.80), lens=28, focus=(3.0, 0, 0.95), roll=1.4)


def varnish_tins():
    garage(light.OVERCAST, bench=False)
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
    garage(light.DUSK, bench=False)
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


def sheer_by_flash():
    """The varnished sheer strake wet, at night, with the phone's own light in it."""
    boat = upright("paint", "varnished", light=light.ONE_BULB, litter=0)
    boat.thwarts()
    p = boat.outside(0.16, 0.93, -1)
    return View(
        near(p, -0.45, -0.70, 0.22),
        near(p, 0.30, 0.05, -0.10),
        lens=27,
        focus=tuple(p),
        stop=5,
        roll=3,
        flash=14,
    )


def taped_sheer():
    """Tape along the lap above the green, by morning light from the door."""
    boat = upright("paint", "ply", light=light.MORNING, litter=0)
    for side in (1, -1):
        path = [boat.outside(t, 0.885, side) for t in np.linspace(0.02, 0.99, 60)]
        outward = [Vector((0, side, 0.1))] * len(path)
        path = [p + Vector((0, side * 0.0135, 0)) for p in path]
        sweep(path, 0.024, 0.002, M["tape"], outward)
    return View((-0.95, -1.45, 1.22), (1.5, -0.20, 0.98), lens=28, focus=(0.6, -0.4, 1), roll=-1)
