"""Hand tools, lofting weights, and what the plane leaves."""

import math
import random

import bpy
from mathutils import Matrix, Vector

from materials import M
from pots import BENCH_TOP
from solids import beam, box, cylinder, lathe, mesh, place, tube


def plane(x, y, z=BENCH_TOP, turn=35):
    """A smoothing plane."""
    at = _spun(x, y, z, turn)
    box(at(0, 0, 0.010), (0.055, 0.24, 0.018), M["steel"], (0, 0, turn), 0.002)
    box(at(0, 0, 0.024), (0.05, 0.10, 0.03), M["dark"], (0, 0, turn), 0.004)
    box(at(0, 0, 0.045), (0.045, 0.004, 0.10), M["steel"], (40, 0, turn), 0.001)
    box(at(0, -0.075, 0.055), (0.024, 0.04, 0.09), M["varnished"], (-20, 0, turn), 0.010)
    knob = [(0.001, 0), (0.012, 0), (0.010, 0.012), (0.018, 0.03), (0.015, 0.045), (0.001, 0.048)]
    lathe(at(0, 0.085, 0.018), knob, M["varnished"])


def spokeshave(x, y, z=BENCH_TOP, turn=20):
    at = _spun(x, y, z, turn)
    box(at(0, 0, 0.014), (0.06, 0.028, 0.022), M["steel"], (0, 0, turn), 0.004)
    box(at(0, -0.004, 0.028), (0.05, 0.004, 0.03), M["zinc"], (-30, 0, turn), 0.001)
    cylinder(at(0, 0.004, 0.045), 0.007, 0.014, M["dark"])
    for side in (-1, 1):
        handle = [
            at(side * d, 0.012 * math.sin(d * 14), 0.016 + 0.3 * max(0, d - 0.05) ** 1.5)
            for d in (0.03, 0.06, 0.09, 0.13)
        ]
        tube(handle, 0.011, M["varnished"])


def bevel_gauge(x, y, z=BENCH_TOP, turn=0, opened=50):
    """A sliding bevel: wooden stock, steel blade."""
    at = _spun(x, y, z, turn)
    box(at(0.06, 0, 0.010), (0.12, 0.024, 0.019), M["varnished"], (0, 0, turn), 0.003)
    blade = _spun(*at(0.012, 0, 0.012), turn + opened)
    box(blade(0.06, 0, 0.001), (0.17, 0.019, 0.0022), M["steel"], (0, 0, turn + opened), 0.0004)
    cylinder(at(0.012, 0, 0.021), 0.008, 0.005, M["yellow"])


def chisel(x, y, z=BENCH_TOP, turn=0, wide=0.019):
    at = _spun(x, y, z, turn)
    box(at(0.07, 0, 0.010), (0.13, wide, 0.004), M["steel"], (0, 0, turn), 0.0008)
    cylinder(at(-0.02, 0, 0.013), 0.006, 0.06, M["steel"], (0, 90, turn))
    cylinder(at(-0.09, 0, 0.014), 0.014, 0.11, M["varnished_fir"], (0, 90, turn), top=0.0115, bevel=0.004)
    cylinder(at(-0.143, 0, 0.014), 0.0142, 0.008, M["zinc"], (0, 90, turn))


def mallet(x, y, z=BENCH_TOP, turn=0):
    at = _spun(x, y, z, turn)
    box(at(0, 0, 0.045), (0.075, 0.13, 0.088), M["oak"], (0, 0, turn), 0.006)
    beam(at(0.02, 0, 0.045), at(0.30, 0.01, 0.016), 0.030, 0.024, M["fir"], bevel=0.007)


def pencil(x, y, z=BENCH_TOP, turn=0, colour="red"):
    at = _spun(x, y, z + 0.0038, turn)
    cylinder(at(0, 0, 0), 0.0037, 0.15, M[colour], (0, 90, turn), segments=6, bevel=0.0003)
    cylinder(at(0.084, 0, 0), 0.0036, 0.018, M["pine"], (0, 90, turn), top=0.0007, segments=12, bevel=0)


def steel_square(x, y, z=BENCH_TOP, turn=0):
    at = _spun(x, y, z, turn)
    box(at(0.15, 0, 0.002), (0.30, 0.025, 0.002), M["steel"], (0, 0, turn), 0.0003)
    box(at(0, 0.10, 0.009), (0.028, 0.20, 0.016), M["varnished"], (0, 0, turn), 0.002)


def weight(x, y, z, turn=0):
    """A lofting weight: a lead body with a hook that sits on the batten at (x, y)."""
    at = _spun(x, y, z, turn)
    box(at(0.135, 0, 0.032), (0.16, 0.062, 0.062), M["lead"], (0, 0, turn), 0.016)
    tube([at(0.08, 0, 0.045), at(0.04, 0, 0.062), at(0.01, 0, 0.050), at(0, 0, 0.022)], 0.003, M["steel"])


def plumb_bob(x, y, z, height):
    """The tip at (x, y, z), the string going up to `height`."""
    body = [
        (0.0004, 0),
        (0.008, 0.03),
        (0.013, 0.055),
        (0.013, 0.075),
        (0.006, 0.085),
        (0.004, 0.098),
        (0.0005, 0.1),
    ]
    lathe((x, y, z), body, M["yellow"])
    cylinder((x, y, (z + 0.1 + height) / 2), 0.0011, height - z - 0.1, M["string"], bevel=0)


def sander(x, y, z, tilt=(0, 0, 0)):
    """A palm sander with its hose stub."""
    cylinder((x, y, z + 0.010), 0.062, 0.016, M["dark"], tilt)
    cylinder((x, y, z + 0.055), 0.048, 0.075, M["green"], tilt, top=0.040, bevel=0.006)
    cylinder((x, y, z + 0.105), 0.043, 0.03, M["dark"], tilt, top=0.032, bevel=0.008)
    tube(
        [
            (x, y + 0.04, z + 0.03),
            (x + 0.02, y + 0.14, z + 0.03),
            (x + 0.16, y + 0.3, z - 0.04),
            (x + 0.3, y + 0.5, z - 0.35),
            (x + 0.5, y + 0.6, 0.02),
            (x + 1.4, y + 0.5, 0.02),
        ],
        0.017,
        M["dark"],
    )


def _spun(x, y, z, turn):
    """From a tool's own axes to the room's."""
    spin = Matrix.Rotation(math.radians(turn), 3, "Z")

    def at(dx, dy, dz):
        p = spin @ Vector((dx, dy, dz))
        return x + p.x, y + p.y, z + p.z

    return at


def shavings(count, heaps, spread=0.5, z=0.001):
    """Curls scattered about the (x, y) of the heaps: loose helices and nearly flat strips."""
    curls = [_curl() for _ in range(9)]
    for _ in range(count):
        x, y = random.choice(heaps)
        curl = place(bpy.data.objects.new("curl", random.choice(curls)))
        curl.location = (x + random.gauss(0, spread), y + random.gauss(0, spread * 0.56), z)
        curl.rotation_euler = (
            random.uniform(-0.12, 0.12),
            random.uniform(-0.15, 0.15),
            random.uniform(0, 6.3),
        )
        curl.scale = [random.uniform(0.5, 1.3)] * 3


def _curl():
    radius, turns = random.choice((0.005, 0.008, 0.012, 0.03)), random.uniform(0.5, 3.5)
    if radius > 0.02:
        turns *= 0.2
    wide, drift, n = random.uniform(0.006, 0.016), random.uniform(0.006, 0.022), 64
    verts = []
    for i in range(n + 1):
        a = 2 * math.pi * turns * i / n
        r = radius * (1 + 0.25 * i / n)
        dx = drift * turns * i / n
        y, up = r * math.sin(a), r * (1 - math.cos(a))
        taper = min(1, 8 * min(i / n, 1 - i / n) + 0.25)
        verts += [(dx - wide * taper / 2, y, up), (dx + wide * taper / 2, y, up)]
    faces = [(2 * i, 2 * i + 1, 2 * i + 3, 2 * i + 2) for i in range(n)]
    step = 2 * math.pi * radius * turns / n
    grain = [[(i * step, 0), (i * step, wide), ((i + 1) * step, wide), ((i + 1) * step, 0)] for i in range(n)]
    obj = mesh(verts, faces, M["pine"], grain, smooth=True)
    data = obj.data
    bpy.data.objects.remove(obj)
    return data
