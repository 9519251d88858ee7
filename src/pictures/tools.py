"""What lies about: clamps, pots, planes, tins, shavings."""

import math
import random

import bmesh
import bpy
import numpy as np
from mathutils import Matrix, Vector

from lines import plank_edges
from materials import M
from solids import beam, box, cylinder, lathe, mesh, place

BENCH_TOP = 0.90


def clamp(point, away, outward, size=0.24, grip="red"):
    """A bar clamp over an edge: `away` points off the plank in its plane, `outward` is its normal."""
    name = f"clamp {size} {grip}"
    made = bpy.data.meshes.get(name) or _forge_clamp(name, size, grip)
    obj = place(bpy.data.objects.new(name, made))
    away = Vector(away).normalized()
    outward = Vector(outward)
    outward = (outward - away * outward.dot(away)).normalized()
    frame = Matrix((away, outward.cross(away), outward)).transposed().to_4x4()
    frame.translation = Vector(point) - away * 0.028
    obj.matrix_world = frame


def _forge_clamp(name, size, grip):
    reach = 0.075
    parts = [
        box((reach, 0, -0.02 + size / 2 - 0.05), (0.018, 0.007, size), M["zinc"]),
        box((reach / 2, 0, -0.047), (reach + 0.02, 0.014, 0.022), M["dark"]),
        cylinder((0, 0, -0.030), 0.014, 0.012, M["dark"]),
        box((reach / 2 + 0.004, 0, 0.055), (reach + 0.03, 0.018, 0.030), M["dark"], bevel=0.004),
        cylinder((0, 0, 0.055), 0.006, 0.10, M["steel"]),
        cylinder((0, 0, 0.006), 0.014, 0.010, M["dark"]),
        cylinder((0, 0, 0.155), 0.0155, 0.10, M[grip], top=0.0125, segments=20, bevel=0.004),
    ]
    graph = bpy.context.evaluated_depsgraph_get()
    graph.update()
    joined, result = bmesh.new(), bpy.data.meshes.new(name)
    for index, part in enumerate(parts):
        solid = part.evaluated_get(graph).to_mesh().copy()
        solid.transform(part.matrix_world)
        for face in solid.polygons:
            face.material_index = index
        joined.from_mesh(solid)
        result.materials.append(part.data.materials[0])
    for part in parts:
        bpy.data.objects.remove(part)
    joined.to_mesh(result)
    joined.free()
    return result


def _mirrored(side, p):
    return Vector((p.x, p.y * side, p.z))


def clamp_row(boat, k, side, stations, grip="red"):
    """Clamps along the upper edge of plank k, each a little askew."""
    for t in stations:
        p0, p1, _, n1 = plank_edges(k, t)
        away = boat.towards(_mirrored(side, (p1 - p0).normalized()))
        outward = boat.towards(_mirrored(side, n1))
        askew = Vector([random.uniform(-most, most) for most in (0.12, 0.1, 0.06)])
        point = boat.at(_mirrored(side, p1))
        clamp(point, away + askew, outward + askew * 0.4, random.choice((0.24, 0.30)), grip)


def tin(foot, radius, height, colour):
    x, y, z = foot
    cylinder((x, y, z + height / 2), radius, height, M[colour], bevel=0.002)
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


def resin_corner(x, y, z=BENCH_TOP):
    """Cups, sticks, drips, brush and the two jugs."""
    for dx, dy, r, h, fill, stick in (
        (0, 0, 0.042, 0.085, 0.5, -0.02),
        (0.11, 0.05, 0.042, 0.085, 0.35, 0.001),
        (-0.06, 0.13, 0.05, 0.06, 0.6, 0.02),
        (0.07, -0.12, 0.036, 0.075, 0, 0),
    ):
        cup(x + dx, y + dy, z, r, h, fill, stick=stick)
    for _ in range(6):
        drip = [(0.001, 0.0016), (random.uniform(0.004, 0.014), 0.0010), (0.018, 0.0002)]
        lathe((x + random.uniform(-0.16, 0.2), y + random.uniform(-0.22, 0.22), z), drip, M["resin"], 16)
    brush(x - 0.17, y - 0.12, z, -1.1)
    jug(x + 0.20, y + 0.16, z, "plastic", "red")
    jug(x + 0.22, y + 0.02, z, "cream", "blue")


def plane(x, y, z=BENCH_TOP, turn=35):
    """A smoothing plane."""
    spin = Matrix.Rotation(math.radians(turn), 3, "Z")

    def at(dx, dy, dz):
        p = spin @ Vector((dx, dy, dz))
        return x + p.x, y + p.y, z + p.z

    box(at(0, 0, 0.010), (0.055, 0.24, 0.018), M["steel"], (0, 0, turn), 0.002)
    box(at(0, 0, 0.024), (0.05, 0.10, 0.03), M["dark"], (0, 0, turn), 0.004)
    box(at(0, 0, 0.045), (0.045, 0.004, 0.10), M["steel"], (40, 0, turn), 0.001)
    box(at(0, -0.075, 0.055), (0.024, 0.04, 0.09), M["varnished"], (-20, 0, turn), 0.010)
    knob = [(0.001, 0), (0.012, 0), (0.010, 0.012), (0.018, 0.03), (0.015, 0.045), (0.001, 0.048)]
    lathe(at(0, 0.085, 0.018), knob, M["varnished"])


def shavings(count, heaps, spread=0.5, z=0.001):
    """Curls scattered about the (x, y) of the heaps."""
    curls = []
    for kind in range(4):
        verts, radius, turns = [], random.uniform(0.004, 0.009), random.uniform(1.2, 3)
        for i in range(41):
            a = i / 40 * turns * 6.28
            r = radius * (1 + 0.15 * i / 40 * turns)
            dx = i / 40 * 0.02 * (kind % 2)
            verts += [
                (dx, r * math.cos(a), radius + r * math.sin(a)),
                (dx + 0.018, r * math.cos(a), radius + r * math.sin(a)),
            ]
        faces = [(2 * i, 2 * i + 1, 2 * i + 3, 2 * i + 2) for i in range(40)]
        curl = mesh(verts, faces, M["pine"], [[(0, 0), (0, 0.02), (0.01, 0.02), (0.01, 0)]] * 40, smooth=True)
        curls.append(curl.data)
        bpy.data.objects.remove(curl)
    for _ in range(count):
        x, y = random.choice(heaps)
        curl = place(bpy.data.objects.new("curl", random.choice(curls)))
        curl.location = (x + random.gauss(0, spread), y + random.gauss(0, spread * 0.56), z)
        curl.rotation_euler = (0, random.uniform(-0.2, 0.2), random.uniform(0, 6.3))
        curl.scale = [random.uniform(0.5, 1.6)] * 3
