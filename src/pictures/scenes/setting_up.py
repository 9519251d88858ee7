"""Strongback, moulds, stem, transom and keelson, until the skeleton stands."""

import random
from dataclasses import replace

import numpy as np
from mathutils import Vector

import light
from boat import MOULDS, Boat, mirrored, mould_half, transom_half
from clamps import clamp
from clutter import BENCH_X
from furniture import horses
from garage import garage
from handtools import bevel_gauge, chisel, mallet, pencil, plane, plumb_bob, shavings, spokeshave
from lines import hull
from materials import M
from pots import BENCH_TOP, cup, spill
from room import LEFT, RIGHT, WINDOW
from solids import box, slab, sweep, tube
from view import View


def skeleton(stations=MOULDS, backbone=True, **room):
    garage(**room)
    boat = Boat(keel_up=True)
    boat.strongback()
    boat.moulds(stations)
    if backbone:
        boat.spine(M["fir"])
        boat.transom(M["oak"])
    return boat


def centre_string(z=0.50):
    for x in (0.05, 4.62):
        box((x, 0, z - 0.02), (0.02, 0.02, 0.10), M["pine"])
    tube([(0.05, 0, z), (1.5, 0, z - 0.001), (3.2, 0, z - 0.001), (4.62, 0, z)], 0.0014, M["string"])


def moulds_leaning():
    """Five moulds cut, stood against the wall by size."""
    garage(light.AFTERNOON, litter=80)
    for i, t in enumerate((0.46, 0.63, 0.29, 0.80, 0.13)):
        outline = mirrored(mould_half(t, 0.89))
        top = max(z for _, z in outline)
        foot, lean = LEFT + 0.30 + 0.06 * i, 0.26
        x = 1.75 + 0.24 * i + random.uniform(-0.05, 0.05)
        points = [Vector((x + y, foot - (top - z) * lean, top - z)) for y, z in outline]
        slab(points, Vector((0, 0.017, 0.005)), M["mould"])
    for i in range(3):
        box((3.3 + 0.04 * i, LEFT + 0.5, 0.03 + 0.02 * i), (0.9, 0.3, 0.018), M["mould"], (0, 0, 8 * i - 6))
    return View((1.25, 0.35, 1.40), (2.30, LEFT, 0.42), lens=26, focus=(2.1, LEFT + 0.4, 0.5), roll=1.2)


def strongback_squared():
    """The strongback alone, with a string down its middle and the bob over the mark."""
    garage(light.MORNING, litter=20)
    Boat(keel_up=True).strongback()
    centre_string()
    plumb_bob(0.12, 0, 0.485, 2.42)
    return View((-0.85, -0.75, 1.50), (2.0, 0.08, 0.40), lens=26, focus=(0.8, 0, 0.5), roll=-0.8)


def three_moulds():
    skeleton(MOULDS[1:4], backbone=False, light=light.EVENING, litter=60)
    centre_string(0.485)
    box((0.9, 0.1, 0.50), (0.02, 0.9, 0.05), M["pine"], (0, 0, 14))
    return View((4.7, -1.2, 1.70), (1.9, 0.1, 0.70), lens=25, focus=(2.5, 0, 0.8), roll=1.0)


def mould_by_the_string():
    """Close by: the middle mould on its cleat, the bob hanging before its centre line."""
    skeleton(MOULDS[:3], backbone=False, light=replace(light.OVERCAST, tubes=0.6), litter=60)
    x = hull(MOULDS[0], 0.5).x
    plumb_bob(x - 0.03, 0.0, 0.60, 2.4)
    clamp((x + 0.03, 0.20, 0.56), (0, 0.1, 1), (1, 0, 0), 0.24, "orange")
    clamp((x + 0.03, -0.22, 0.56), (0, 0.1, 1), (1, 0, 0), 0.24)
    return View(
        (x - 0.9, -0.55, 1.15), (x + 0.1, 0.02, 0.82), lens=32, focus=(x, 0, 0.8), stop=3.2, roll=-1.5
    )


def stem_in_clamps():
    """Seven laminations bent round blocks on the bench, under every small clamp there is."""
    garage(light.NIGHT, bench=False, litter=60)
    cx, cy, z = BENCH_X + 0.14, -0.65, BENCH_TOP
    box((cx - 0.10, cy + 0.45, z + 0.009), (0.62, 1.15, 0.018), M["mould"])
    z += 0.018
    curve = [hull(0, u) for u in np.linspace(1, 0.0, 40)]
    curve += [Vector((hull(t, 0).x, 0, hull(t, 0).z)) for t in np.linspace(0.01, 0.06, 6)]
    flat = [Vector((cx - 0.36 + p.x * 0.92, cy + p.z * 1.15, 0)) for p in curve]
    outward = [
        Vector(((b - a).y, -(b - a).x, 0)).normalized()
        for a, b in zip(flat, flat[1:] + [flat[-1] * 2 - flat[-2]])
    ]
    for i in range(7):
        path = [p - n * 0.0072 * i + Vector((0, 0, z + 0.022)) for p, n in zip(flat, outward)]
        sweep(path, 0.040, 0.0066, M[("fir", "fir", "pine")[i % 3]], outward)
    for i in range(2, 44, 4):
        p, n = flat[i], outward[i]
        block = p - n * 0.085
        box(
            (block.x, block.y, z + 0.02),
            (0.07, 0.07, 0.038),
            M["pine"],
            (0, 0, np.degrees(np.arctan2(n.y, n.x))),
        )
        inner = p - n * 0.045 + Vector((0, 0, z + 0.046))
        clamp(
            inner, Vector((random.uniform(-0.05, 0.05), 0.03, 1)), -n, 0.30, random.choice(("red", "orange"))
        )
    for _ in range(7):
        i = random.randrange(4, 40)
        spill(*(flat[i] + outward[i] * random.uniform(0.01, 0.03))[:2], z, random.choice((0.004, 0.008)))
    cup(cx - 0.42, cy + 0.1, z - 0.018, 0.042, 0.085, 0.25, stick=0.02)
    return View(
        (cx - 0.78, cy + 0.95, BENCH_TOP + 0.72),
        (cx - 0.12, cy + 0.33, BENCH_TOP),
        lens=28,
        focus=(cx - 0.1, cy + 0.4, BENCH_TOP),
        stop=4,
        roll=2,
    )


def transom_and_pattern():
    """The blank on the bench, the half pattern turned over on its centre line, the other half marked."""
    garage(light.WINTER, bench=False, litter=60)
    x, y, z = BENCH_X + 0.24, 0.15, BENCH_TOP
    half = transom_half()
    for i in range(3):  # three boards, glued edge to edge
        box((x - 0.10 - 0.19 * i, y, z + 0.014), (0.188, 1.15, 0.028), M["oak"], bevel=0.0006)
    z += 0.0285
    pattern = [Vector((x - (h - 0.10), y + w, z)) for w, h in half] + [Vector((x - 0.03, y, z))]
    slab(pattern, Vector((0, 0, 0.004)), M["mould"], 0.0005)
    line = [Vector((x - (h - 0.10), y - w, z + 0.0004)) for w, h in half]
    tube(line, 0.0005, M["dark"])
    tube([Vector((x - 0.005, y, z + 0.0004)), Vector((x - 0.57, y, z + 0.0004))], 0.0005, M["dark"])
    pencil(x - 0.30, y - 0.28, z, 20, "yellow")
    bevel_gauge(x - 0.45, y - 0.40, z, 60, 75)
    shavings(12, [(x - 0.4, y - 0.5)], 0.1, z)
    return View(
        (x - 0.82, y - 0.42, z + 0.72),
        (x - 0.24, y + 0.02, z),
        lens=28,
        focus=(x - 0.3, y, z),
        stop=5,
        roll=-2.5,
    )


def bench_tools():
    """What the backbone was cut with."""
    garage(light.AFTERNOON, bench=False, litter=60)
    x, y, z = BENCH_X - 0.10, 0.55, BENCH_TOP
    box((x + 0.22, y - 0.1, z + 0.03), (0.07, 1.1, 0.058), M["fir"], (0, 0, 3))
    plane(x + 0.02, y + 0.17, turn=70)
    spokeshave(x - 0.10, y + 0.02, turn=-65)
    chisel(x - 0.04, y - 0.14, turn=160, wide=0.025)
    chisel(x - 0.09, y - 0.19, turn=168, wide=0.012)
    mallet(x + 0.12, y - 0.27, turn=200)
    bevel_gauge(x - 0.20, y + 0.17, turn=-25, opened=110)
    pencil(x - 0.18, y - 0.06, turn=75)
    shavings(60, [(x, y), (x + 0.12, y - 0.15), (x - 0.1, y + 0.25)], 0.09, z + 0.001)
    return View(
        (x - 0.52, y - 0.22, z + 0.44), (x + 0.02, y, z), lens=32, focus=(x - 0.04, y, z), stop=3.2, roll=3
    )


def boards_on_horses():
    """The strongback's two rails to be, planed on two horses through the length of the garage."""
    garage(light.DAY, litter=160)
    y, z = -0.2, 0.82
    horses((0.3, 3.4), y, z - 0.05)
    for i, dy in enumerate((0.0, 0.13)):
        path = [Vector((x, y + dy, z)) for x in np.linspace(-0.75, 3.85 - 0.4 * i, 14)]
        sweep(path, 0.10 - 0.05 * i, 0.03, M["fir" if not i else "pine"])
    spokeshave(0.75, y, z + 0.015, 12)
    plane(1.5, y, z + 0.015, -84)
    for x in (1.55, 1.62):
        tube([(x, y - 0.051, z + 0.0155), (x + 0.24, y + 0.051, z + 0.0155)], 0.0007, M["dark"])
    shavings(90, [(1.2, y), (1.9, y - 0.1)], 0.25)
    return View((-1.25, -1.25, 1.45), (1.6, -0.02, 0.70), lens=25, focus=(0.6, y, z), roll=-1)


def skeleton_in_grey():
    """January, door shut, window light: no battens yet."""
    skeleton(light=replace(light.WINTER, bulb=1.2), litter=60)
    return View((-1.2, 1.35, 1.15), (2.1, -0.15, 0.82), lens=25, focus=(1, 0, 1), roll=0.4, warmth=-0.3)


def through_the_window():
    """From the yard by night: the skeleton under the tubes."""
    skeleton(light=light.NIGHT, litter=60)
    x0, x1, z0, _ = WINDOW
    middle = (x0 + x1) / 2
    return View(
        (middle + 0.75, RIGHT + 0.62, z0 + 0.62),
        (middle - 0.55, 0, 0.98),
        lens=26,
        stop=0,
        roll=-1.5,
        warmth=0.2,
    )


def stem_from_the_floor():
    """Lying on the floor by the door, looking up at the stem and along the keelson."""
    skeleton(light=replace(light.NIGHT, tubes=2.0), litter=60)
    return View((-0.75, -0.30, 0.28), (1.6, 0.05, 1.25), lens=24, focus=(0.3, 0, 1), roll=2)
