"""Bar clamps, one or in a row along a lap."""

import random

import bmesh
import bpy
from mathutils import Matrix, Vector

from lines import plank_edges
from materials import M
from solids import box, cylinder, place


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
