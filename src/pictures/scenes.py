"""What stands before the camera in each picture. Each function lays one scene and returns its View."""

import math
import random
from dataclasses import dataclass

import numpy as np
from mathutils import Vector

from boat import Boat
from drawing import lines_plan
from garage import BENCH_X, garage
from lines import PLANK_LINES, PLANKS, hull
from materials import M, printed
from solids import beam, box, cylinder, lathe, mesh, slab, sweep
from tools import BENCH_TOP, brush, clamp, clamp_row, cup, plane, shavings, tin

NIGHT = dict(door=0, window=0, tubes=2.4, lamp=1.2)
DAY = dict(door=5.0)


@dataclass
class View:
    """Camera place, target and focus in metres, full-frame focal length in mm, f-number (0: all sharp), roll in degrees."""

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
    return View(near(p, -0.75, -0.45, 0.40), near(p, 0.25, 0.10, -0.02), lens=30, focus=tuple(p), stop=3.2, roll=3, exposure=0.3)


def third_pair_clamped():
    boat = setup(3, door=4.0)
    clamp_row(boat, 2, 1, np.linspace(0.08, 0.95, 16))
    clamp_row(boat, 2, -1, np.linspace(0.08, 0.95, 16), "orange")
    return View((-0.95, 1.45, 1.60), (2.1, -0.15, 0.88), focus=(1.2, 0, 1.1), roll=-0.7)


def clamps_along_lap():
    boat = setup(4, 3, door=5.0)
    clamp_row(boat, 3, 1, np.linspace(0.06, 0.95, 22))
    p = boat.outside(0.26, PLANK_LINES[4], 1)
    return View(near(p, -0.62, 0.36, 0.30), near(p, 0.10, -0.04, 0.01), lens=40, focus=tuple(p), stop=2.2, roll=2)


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
    return View(near(p, 0.72, -0.72, 0.30), near(p, -0.45, 0.15, -0.02), lens=34, focus=tuple(p), stop=2.8, roll=-1.5)


def all_planks():
    setup(PLANKS, door=0, lamp=0, tubes=1.7, window=0.5)
    return View((4.98, -1.25, 1.66), (1.9, 0.22, 0.86), focus=(3.5, 0, 1), roll=0.5, exposure=0.25)


def fair_laps():
    setup(PLANKS, door=1.6, window=1.4, tubes=0.5, lamp=0)
    return View((-0.85, 1.05, 1.02), (2.4, 0.15, 0.90), lens=32, focus=(0.8, 0.5, 1.0), stop=4, roll=-0.8, exposure=0.15)


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
    return View((-0.55, 0.75, 1.86), (2.1, -0.05, 0.70), lens=25, focus=(1.5, 0, 0.9), roll=1.0, exposure=0.15)


def knee():
    upright(door=2.0, window=1.6).thwarts("fir")
    x = hull(0.56, 0.6).x
    return View((x - 0.62, -0.10, 1.40), (x + 0.02, 0.56, 1.02), lens=32, focus=(x, 0.55, 1.0), stop=2.8, roll=-3, exposure=0.2)


def rails_on():
    boat = upright(door=3.0, tubes=1.4)
    boat.thwarts("fir")
    for side in (1, -1):
        for t in np.linspace(0.08, 0.95, 14):
            p = boat.outside(t, 1.0, side)
            clamp((p.x, p.y, p.z + 0.02), (random.uniform(-0.1, 0.1), 0, 1), (0, side, 0.05), 0.24, random.choice(("red", "orange")))
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


# Bench and floor -----------------------------------------------------------------------------------


def resin_pots():
    setup(2, door=2.0, window=1.0)
    x = BENCH_X - 0.05
    return View((x - 0.50, 0.16, 1.24), (x + 0.06, 0.48, 0.965), lens=42, focus=(x, 0.45, 0.97), stop=2.8, roll=1)


def plan_on_bench():
    garage(door=3.0, lamp=1.5, bench=False)
    x, y, n = BENCH_X - 0.08, -0.62, 24
    verts, faces, uvs = [], [], []
    for i in range(n + 1):
        for j in range(n + 1):
            a, b = i / n, j / n
            wave = 0.0035 * math.sin(a * 5 + b * 2) + 0.45 * max(0, a - 0.86) ** 1.5 + 0.42 * max(0, 0.12 - b) ** 1.5
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
    return View((x - 0.42, y + 0.16, BENCH_TOP + 0.50), (x + 0.03, y, BENCH_TOP), lens=34, focus=(x, y, BENCH_TOP), stop=3.5, roll=-3)


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
            slab([Vector((x + dx - w / 2, y, z + h)) for y, h in outline], Vector((w, 0, 0)), M["fir" if i == 1 else "pine"], 0.0004)
        if i < 2:
            y, top = -slope / 2, z + thick + 0.0004
            beam((x + dx - w / 2, y, top), (x + dx + w / 2, y, top), 0.006, 0.0016, M["resin"], bevel=0.0006)
            beam((x + dx - w / 2 - 0.01, y + 0.05, top + 0.009), (x + dx + w / 2 + 0.01, y + 0.05, top + 0.009), 0.035, 0.018, M["pine"])
    for y in (0.17, -0.20):
        clamp((x + 0.155, y, z), (1, 0.05, 0), (0, 0, 1))
    shavings(26, [(x - 0.12, -0.22), (x + 0.05, 0.3)], 0.07, z)
    return View((x - 0.34, -0.30, BENCH_TOP + 0.27), (x + 0.01, 0.0, BENCH_TOP + 0.015), lens=38, focus=(x, -0.02, BENCH_TOP + 0.02), stop=3.2, roll=2)


def plane_and_shavings():
    garage(door=5.0, window=1.3, bench=False)
    x, y = BENCH_X - 0.06, 0.55
    box((x + 0.02, y, BENCH_TOP + 0.012), (0.12, 1.5, 0.022), M["fir"], (0, 0, 2))
    plane(x - 0.02, y - 0.02, BENCH_TOP + 0.023, turn=8)
    shavings(150, [(x - 0.12, y + 0.15), (x, y - 0.3), (x + 0.05, y + 0.3)], 0.10, BENCH_TOP + 0.002)
    beam((x - 0.20, y - 0.30, BENCH_TOP + 0.004), (x - 0.13, y - 0.14, BENCH_TOP + 0.004), 0.0075, 0.0075, M["red"])
    return View((x - 0.46, y - 0.34, BENCH_TOP + 0.36), (x + 0.02, y + 0.03, BENCH_TOP + 0.03), lens=36, focus=(x, y, BENCH_TOP + 0.04), stop=3.2, roll=-2)


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
    return View((x - 0.30, y - 0.30, 0.40), (x + 0.04, y + 0.02, 0.04), lens=32, focus=(x, y, 0.07), stop=3.2, roll=4)


def mast_on_horses():
    upright(door=5.0).thwarts("fir")
    y, z = -1.12, 0.93
    for x in (0.5, 3.1):
        box((x, y, z - 0.09), (0.09, 0.5, 0.09), M["pine"])
        for dy in (-0.2, 0.2):
            for dx in (-1, 1):
                beam((x + dx * 0.02, y + dy, z - 0.12), (x + dx * 0.2, y + dy * 1.2, 0), 0.038, 0.08, M["pine"], up=(0, 1, 0))
    path = [Vector((x, y, z)) for x in np.linspace(-0.55, 3.5, 12)]
    sweep(path, 0.062, 0.062, M["fir"])
    for x in np.linspace(-0.3, 3.2, 10):
        clamp((x, y + 0.03, z + 0.03), (random.uniform(-0.1, 0.1), 0.05, 1), (0, 1, 0), 0.24, random.choice(("red", "orange", "red")))
    return View((-1.25, -1.55, 1.50), (1.6, -0.85, 0.82), lens=25, focus=(0.3, y, z), roll=-0.6, exposure=0.1)


def oars_on_bench():
    garage(door=4.0, window=1.3, bench=False)
    x = BENCH_X - 0.12
    for i, dx in enumerate((0.0, 0.14)):
        y = -0.15 + i * 0.06
        cylinder((x + dx, y - 0.15, BENCH_TOP + 0.03), 0.021, 1.7, M["fir"], (90, 0, 0), top=0.024)
        outline = [(-0.022, 0.62), (-0.034, 0.75), (-0.062, 1.0), (-0.066, 1.25), (0.066, 1.25), (0.062, 1.0), (0.034, 0.75), (0.022, 0.62)]
        points = [Vector((x + dx + a, y + b, BENCH_TOP + 0.024)) for a, b in outline]
        slab(points, Vector((0, 0, 0.011)), M["fir"], 0.004)
    plane(x + 0.26, 0.15, turn=-12)
    shavings(170, [(x - 0.1, 0.1), (x + 0.1, 0.5), (x + 0.2, -0.2)], 0.16, BENCH_TOP + 0.002)
    return View((x - 0.52, 1.50, BENCH_TOP + 0.50), (x + 0.06, 0.72, BENCH_TOP), lens=28, focus=(x, 0.85, BENCH_TOP + 0.03), stop=4, roll=2)


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
    return View((x - 0.50, y - 0.22, BENCH_TOP + 0.34), (x + 0.02, y, BENCH_TOP + 0.05), lens=38, focus=(x, y, BENCH_TOP + 0.06), stop=2.8, roll=-2)


def sailcloth():
    garage(door=4.0, bench=False)
    x, y, n = BENCH_X - 0.06, -0.25, 30
    for fold in range(5):  # each fold a soft-edged slab, none of them square to the next
        at = (x + random.uniform(-0.008, 0.008), y + random.uniform(-0.01, 0.01), BENCH_TOP + 0.011 + 0.019 * fold)
        box(at, (0.34 - 0.008 * fold, 0.46 - 0.01 * fold, 0.021), M["cloth"], (0, 0, random.uniform(-4, 4)), 0.0085)
    verts = []
    for i in range(n + 1):  # the last panel thrown on top, one end hanging over
        for j in range(n + 1):
            a, b = i / n, j / n
            wrinkle = 0.005 * math.sin(7 * a + 2 * b) * math.sin(6 * b + 1) + 0.002 * math.sin(19 * a + 13 * b)
            hang = 0.10 * max(0, (a - 0.78) / 0.22) ** 1.5
            verts.append((x + (b - 0.45) * 0.30 + 0.03 * a, y + (a - 0.36) * 0.56, BENCH_TOP + 0.112 + wrinkle - hang))
    faces = [(i * (n + 1) + j, i * (n + 1) + j + 1, (i + 1) * (n + 1) + j + 1, (i + 1) * (n + 1) + j) for i in range(n) for j in range(n)]
    mesh(verts, faces, M["cloth"], smooth=True)
    for i in range(3):
        cylinder((x - 0.12, y + 0.34 + 0.05 * i, BENCH_TOP + 0.02), 0.018, 0.04, M[("white", "cream", "rope")[i]], bevel=0.003)
    box((x - 0.10, y - 0.30, BENCH_TOP + 0.004), (0.09, 0.03, 0.004), M["steel"], (0, 0, 30))
    return View((x - 0.48, y + 0.34, BENCH_TOP + 0.42), (x, y + 0.02, BENCH_TOP + 0.04), lens=34, focus=(x, y, BENCH_TOP + 0.09), stop=3.5, roll=2)
