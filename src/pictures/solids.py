"""Simple solids with texture coordinates in metres, u along the grain."""

import math

import bmesh
import bpy
from mathutils import Matrix, Vector

CUBE = [(0, 1, 3, 2), (4, 6, 7, 5), (0, 4, 5, 1), (2, 3, 7, 6), (0, 2, 6, 4), (1, 5, 7, 3)]


def place(obj):
    bpy.context.collection.objects.link(obj)
    return obj


def mesh(verts, faces, materials, uvs=None, across=None, face_materials=None, bevel=0, smooth=False):
    """A mesh object. `across` is a second set of coordinates, 0 to 1 across a plank, for glue smears."""
    me = bpy.data.meshes.new("mesh")
    me.from_pydata([tuple(v) for v in verts], [], faces)
    # Both layers go in before the normals are turned: turning reorders the corners of a face.
    for name, layer in (("grain", uvs), ("across", across)):
        if layer:
            data = me.uv_layers.new(name=name).data
            for face, corners in zip(me.polygons, layer):
                for loop, uv in zip(face.loop_indices, corners):
                    data[loop].uv = uv
    bm = bmesh.new()
    bm.from_mesh(me)
    bmesh.ops.recalc_face_normals(bm, faces=bm.faces)
    bm.to_mesh(me)
    bm.free()
    for material in materials if isinstance(materials, list) else [materials]:
        me.materials.append(material)
    for face, index in zip(me.polygons, face_materials or []):
        face.material_index = index
    if smooth:
        for face in me.polygons:
            face.use_smooth = True
        me.use_auto_smooth, me.auto_smooth_angle = True, 0.6
    obj = place(bpy.data.objects.new("mesh", me))
    if bevel:
        mod = obj.modifiers.new("bevel", "BEVEL")
        mod.width, mod.segments, mod.limit_method = bevel, 2, "ANGLE"
    return obj


def box(centre, size, material, turn=(0, 0, 0), bevel=0.0015):
    """A board: the grain runs along its longest side. `turn` in degrees."""
    v = [
        Vector((a * size[0] / 2, b * size[1] / 2, c * size[2] / 2))
        for a in (-1, 1)
        for b in (-1, 1)
        for c in (-1, 1)
    ]
    axes = sorted(range(3), key=lambda i: -size[i])
    uvs = []
    for face in CUBE:
        flat = [a for a in axes if max(v[i][a] for i in face) - min(v[i][a] for i in face) > 1e-9]
        a, b = flat[:2] if len(flat) > 1 else axes[:2]
        uvs.append([(v[i][a], v[i][b] + 0.3 * b) for i in face])
    obj = mesh(v, CUBE, material, uvs, bevel=bevel)
    obj.location, obj.rotation_euler = centre, [math.radians(a) for a in turn]
    return obj


def beam(start, end, width, height, material, up=(0, 0, 1), bevel=0.0015):
    p, q = Vector(start), Vector(end)
    x = (q - p).normalized()
    y = Vector(up).cross(x).normalized()
    obj = box((0, 0, 0), ((q - p).length, width, height), material, bevel=bevel)
    frame = Matrix((x, y, x.cross(y))).transposed().to_4x4()
    frame.translation = (p + q) / 2
    obj.matrix_world = frame
    return obj


def cylinder(centre, radius, height, material, turn=(0, 0, 0), top=None, segments=32, bevel=0.001):
    """A cylinder, or a cone frustum where `top` gives another radius."""
    top = radius if top is None else top
    v, faces, uvs = [], [], []
    for i in range(segments):
        a = 2 * math.pi * i / segments
        v += [
            (radius * math.cos(a), radius * math.sin(a), -height / 2),
            (top * math.cos(a), top * math.sin(a), height / 2),
        ]
        j, s, e = (i + 1) % segments, 6.28 * radius * i / segments, 6.28 * radius * (i + 1) / segments
        faces.append((2 * i, 2 * j, 2 * j + 1, 2 * i + 1))
        uvs.append([(0, s), (0, e), (height, e), (height, s)])
    faces += [tuple(2 * i + k for i in range(segments)) for k in (0, 1)]
    uvs += [[(0, 0)] * segments] * 2
    obj = mesh(v, faces, material, uvs, bevel=bevel, smooth=True)
    obj.location, obj.rotation_euler = centre, [math.radians(a) for a in turn]
    return obj


def lathe(centre, profile, material, segments=40):
    """The profile [(radius, height), ...] turned about the vertical."""
    v = [
        (r * math.cos(2 * math.pi * i / segments), r * math.sin(2 * math.pi * i / segments), z)
        for r, z in profile
        for i in range(segments)
    ]
    faces = []
    for k in range(len(profile) - 1):
        for i in range(segments):
            j = (i + 1) % segments
            faces.append((k * segments + i, k * segments + j, (k + 1) * segments + j, (k + 1) * segments + i))
    obj = mesh(v, faces, material, smooth=True)
    obj.location = centre
    return obj


def tube(points, radius, material, closed=False):
    curve = bpy.data.curves.new("tube", "CURVE")
    curve.dimensions, curve.bevel_depth, curve.bevel_resolution, curve.resolution_u = "3D", radius, 3, 6
    spline = curve.splines.new("NURBS")
    spline.points.add(len(points) - 1)
    spline.use_endpoint_u, spline.order_u, spline.use_cyclic_u = True, 4, closed
    for p, q in zip(spline.points, points):
        p.co = (*q, 1)
    curve.materials.append(material)
    return place(bpy.data.objects.new("tube", curve))


def sweep(path, width, height, material, normals=None):
    """A rectangular stick bent along the path; `height` is measured along the normals."""
    v, faces, uvs, run, at = [], [], [], 0, []
    n = len(path)
    for i, p in enumerate(path):
        run += (p - path[i - 1]).length if i else 0
        at.append(run)
        along = (path[min(i + 1, n - 1)] - path[max(i - 1, 0)]).normalized()
        up = normals[i] if normals else Vector((0, 1, 0)).cross(along)
        up = (up - along * up.dot(along)).normalized()
        side = along.cross(up)
        v += [
            p + side * (a * width / 2) + up * (c * height / 2)
            for a, c in ((-1, -1), (1, -1), (1, 1), (-1, 1))
        ]
    for i in range(n - 1):
        for k in range(4):
            m, a = (k + 1) % 4, 0.4 * k
            faces.append((4 * i + k, 4 * i + m, 4 * i + 4 + m, 4 * i + 4 + k))
            uvs.append([(at[i], a), (at[i], a + width), (at[i + 1], a + width), (at[i + 1], a)])
    faces += [(0, 1, 2, 3), (4 * n - 4, 4 * n - 3, 4 * n - 2, 4 * n - 1)]
    uvs += [[(0, 0), (0, width), (height, width), (height, 0)]] * 2
    return mesh(v, faces, material, uvs, bevel=0.0015, smooth=True)


def panel(a, b, c, d, material, u=1, v=1):
    return mesh([a, b, c, d], [(0, 1, 2, 3)], material, [[(0, 0), (u, 0), (u, v), (0, v)]])


def slab(outline, offset, material, bevel=0.001):
    """A flat outline of points, thickened by the vector `offset`; grain along its longer side."""
    n = len(outline)
    v = list(outline) + [p + offset for p in outline]
    faces = [tuple(range(n)), tuple(range(n, 2 * n))] + [
        (i, (i + 1) % n, n + (i + 1) % n, n + i) for i in range(n)
    ]
    through = max(range(3), key=lambda i: abs(offset[i]))
    extent = {i: max(p[i] for p in outline) - min(p[i] for p in outline) for i in range(3) if i != through}
    a, b = sorted(extent, key=extent.get, reverse=True)
    flat = [(p[a], p[b]) for p in outline]
    uvs = [flat, flat] + [
        [(flat[i][0], 0), (flat[(i + 1) % n][0], 0), (flat[(i + 1) % n][0], 0.02), (flat[i][0], 0.02)]
        for i in range(n)
    ]
    return mesh(v, faces, material, uvs, bevel=bevel)
