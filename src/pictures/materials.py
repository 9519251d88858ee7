"""Woods, metals, paints and the room's surfaces. M holds them by name once `mix_all` has run."""

import bpy

M = {}


class Recipe:
    """One material under construction: calling it adds a shader node and links its inputs."""

    def __init__(self, name):
        self.material = bpy.data.materials.new(name)
        self.material.use_nodes = True
        self.tree = self.material.node_tree
        self.base = self.tree.nodes["Principled BSDF"]

    def __call__(self, kind, inputs=None, **properties):
        node = self.tree.nodes.new("ShaderNode" + kind)
        for key, value in properties.items():
            setattr(node, key, value)
        for key, value in (inputs or {}).items():
            self.feed(node.inputs[key], value)
        return node

    def feed(self, socket, value):
        if hasattr(value, "is_output"):
            self.tree.links.new(value, socket)
        elif hasattr(value, "outputs"):
            self.tree.links.new(value.outputs[0], socket)
        elif isinstance(value, tuple) and len(value) == 3 and socket.type == "RGBA":
            socket.default_value = (*value, 1)
        else:
            socket.default_value = value

    def math(self, operation, a, b=0.0):
        return self("Math", {0: a, 1: b}, operation=operation).outputs[0]

    def scaled(self, vector, factors):
        return self("VectorMath", {0: vector, 1: factors}, operation="MULTIPLY").outputs[0]

    def moved(self, vector, by):
        return self("VectorMath", {0: vector, 1: by}, operation="ADD").outputs[0]

    def ramp(self, factor, *stops):
        ramp = self("ValToRGB", {0: factor})
        elements = ramp.color_ramp.elements
        while len(elements) < len(stops):
            elements.new(0.5)
        for element, (position, colour) in zip(elements, stops):
            element.position = position
            element.color = (*colour, 1) if isinstance(colour, tuple) else (colour, colour, colour, 1)
        return ramp.outputs[0]

    def mix(self, factor, a, b, blend="MIX"):
        return self("MixRGB", {0: factor, 1: a, 2: b}, blend_type=blend).outputs[0]

    def noise(self, vector, scale, detail=3.0, rough=0.5, distortion=0.0, output=0, flat=False):
        """`flat` looks at the vector's x and y alone, which costs half."""
        values = {
            "Vector": vector,
            "Scale": scale,
            "Detail": detail,
            "Roughness": rough,
            "Distortion": distortion,
        }
        return self("TexNoise", values, noise_dimensions="2D" if flat else "3D").outputs[output]

    def bump(self, strength, distance, height):
        return self("Bump", {"Strength": strength, "Distance": distance, "Height": height})

    def finish(self, **inputs):
        for key, value in inputs.items():
            self.feed(self.base.inputs[key.replace("_", " ")], value)
        return self.material


def wood(name, light, dark, rough=0.55, coat=0.0, ring=22.0, glue=False, contrast=1.0):
    """Grain from three stretched noises and a distorted saw wave; every board is its own piece of the log."""
    r = Recipe(name)
    grain = r("UVMap", uv_map="grain").outputs[0]
    chance = r("ObjectInfo").outputs["Random"]
    log = r("CombineXYZ", {i: r.math("MULTIPLY", chance, f) for i, f in enumerate((71.0, 37.0, 13.0))})
    v = r.moved(grain, log)
    figure = r.noise(r.scaled(v, (0.7, 9, 1)), 1.0, 4.0, 0.6, 0.8, flat=True)
    streak = r.noise(r.scaled(v, (2.5, 70, 1)), 1.0, 3.0, 0.6, flat=True)
    pore = r.noise(r.scaled(v, (9, 420, 1)), 1.0, 2.0, 0.6, flat=True)
    sway = r(
        "CombineXYZ", {1: r.math("MULTIPLY", r.noise(r.scaled(v, (0.55, 2.5, 1)), 1.0, 2.0, flat=True), 0.35)}
    )
    rings = r(
        "TexWave",
        {"Vector": r.moved(v, sway), "Scale": ring, "Distortion": 1.5, "Detail": 2.0, "Detail Scale": 1.5},
        wave_type="BANDS",
        bands_direction="Y",
        wave_profile="SAW",
    ).outputs[1]
    parts = [r.math("MULTIPLY", a, w) for a, w in ((figure, 0.38), (rings, 0.2), (streak, 0.3), (pore, 0.16))]
    factor = r.math("ADD", r.math("ADD", parts[0], parts[1]), r.math("ADD", parts[2], parts[3]))
    half = 0.16 / contrast
    colour = r.ramp(factor, (0.5 - half, dark), (0.5 + half, light))
    colour = r(
        "HueSaturation",
        {
            "Hue": r.math("ADD", r.math("MULTIPLY", chance, 0.016), 0.492),
            "Saturation": 0.88,
            "Value": r.math("ADD", r.math("MULTIPLY", chance, 0.44), 0.72),
            "Color": colour,
        },
    ).outputs[0]
    roughness = r.math("ADD", r.math("MULTIPLY", streak, 0.2), rough - 0.1)
    if glue:
        across = r("UVMap", uv_map="across").outputs[0]
        y = r("SeparateXYZ", {0: across}).outputs[1]
        edge = r.math("MINIMUM", y, r.math("SUBTRACT", 1.0, y))
        along = r("SeparateXYZ", {0: v}).outputs[0]
        patch = r.noise(r("CombineXYZ", {0: r.math("MULTIPLY", along, 7.0), 1: y}), 1.0, 4.0, 0.7, flat=True)
        reach = r.math("SUBTRACT", r.math("MULTIPLY", patch, 0.5), 0.17)
        smear = r.ramp(r.math("SUBTRACT", reach, edge), (0.0, 0.0), (0.05, 0.75))
        colour = r.mix(smear, colour, r.mix(0.7, colour, (0.30, 0.17, 0.07), "MULTIPLY"))
        roughness = r.mix(smear, roughness, (0.22, 0.22, 0.22))
    return r.finish(
        Base_Color=colour,
        Roughness=roughness,
        Clearcoat=coat,
        Clearcoat_Roughness=0.06,
        Specular=0.35,
    )


def plain(name, colour, rough=0.5, metal=0.0, coat=0.0, dirt=0.25, clear=0.0):
    r = Recipe(name)
    where = r("TexCoord").outputs["Object"]
    blotch, fine = r.noise(where, 9.0, 6.0, 0.65), r.noise(where, 90.0, 3.0, 0.6)
    shade = r.mix(r.math("MULTIPLY", blotch, dirt), (*colour, 1), tuple(x * 0.45 for x in colour))
    value = r.math("ADD", r.math("MULTIPLY", r("ObjectInfo").outputs["Random"], 0.2), 0.9)
    shade = r("HueSaturation", {"Value": value, "Color": shade}).outputs[0]
    return r.finish(
        Base_Color=shade,
        Metallic=metal,
        Clearcoat=coat,
        Transmission=clear,
        Roughness=r.math("ADD", r.math("MULTIPLY", fine, 0.25), rough - 0.12),
    )


def concrete():
    """A cracked floor with stains, paint specks and sawdust."""
    r = Recipe("concrete")
    where = r("TexCoord").outputs["Object"]
    broad, mid, fine = (
        r.noise(where, 0.9, 5.0, 0.62, 0.4, flat=True),
        r.noise(where, 14.0, 4.0, 0.7, flat=True),
        r.noise(where, 160.0, 2.0, flat=True),
    )
    factor = r.math("ADD", r.math("MULTIPLY", broad, 0.65), r.math("MULTIPLY", mid, 0.35))
    colour = r.ramp(
        factor, (0.33, (0.16, 0.15, 0.14)), (0.5, (0.27, 0.26, 0.245)), (0.68, (0.36, 0.35, 0.33))
    )
    colour = r.mix(
        r.ramp(r.noise(where, 1.7, 4.0, 0.75, 1.0, flat=True), (0.60, 0.0), (0.68, 0.6)),
        colour,
        (0.10, 0.09, 0.085),
    )
    colour = r.mix(
        r.ramp(r.noise(where, 55.0, 2.0, 0.6, flat=True), (0.70, 0.0), (0.72, 0.7)), colour, (0.5, 0.47, 0.42)
    )
    wander = r.scaled(r.noise(where, 2.2, 3.0, output=1, flat=True), (0.5, 0.5, 0))
    crack = r(
        "TexVoronoi", {"Vector": r.moved(where, wander), "Scale": 0.55}, feature="DISTANCE_TO_EDGE"
    ).outputs[0]
    colour = r.mix(r.ramp(crack, (0.0, 0.7), (0.003, 0.0)), colour, (0.05, 0.045, 0.04))
    dust = r.math("ADD", r.noise(where, 2.3, 4.0, 0.7, flat=True), r.math("MULTIPLY", mid, 0.3))
    colour = r.mix(r.ramp(dust, (0.62, 0.0), (0.85, 0.55)), colour, (0.55, 0.42, 0.27))
    return r.finish(
        Base_Color=colour,
        Roughness=r.math("ADD", r.math("MULTIPLY", mid, 0.35), 0.42),
        Normal=r.bump(0.25, 0.002, fine),
    )


def block_wall(colour=(0.47, 0.455, 0.41)):
    r = Recipe("blocks")
    uv = r("UVMap", uv_map="grain").outputs[0]
    rough_uv = r.moved(uv, r.scaled(r.noise(uv, 7.0, 3.0, output=1, flat=True), (0.012, 0.012, 0)))
    brick = r(
        "TexBrick",
        {
            "Vector": rough_uv,
            "Scale": 1.0,
            "Mortar Size": 0.006,
            "Mortar Smooth": 0.6,
            "Brick Width": 0.45,
            "Row Height": 0.225,
            "Color1": (1, 1, 1, 1),
            "Color2": (0.9, 0.9, 0.9, 1),
            "Mortar": (0.72, 0.72, 0.72, 1),
        },
    )
    stain, fine, z = (
        r.noise(uv, 1.3, 5.0, 0.65, flat=True),
        r.noise(uv, 70.0, 2.0, 0.7, flat=True),
        r("SeparateXYZ", {0: uv}).outputs[1],
    )
    shade = r.mix(1.0, (*colour, 1), brick.outputs[0], "MULTIPLY")
    shade = r.mix(r.ramp(stain, (0.45, 0.0), (0.75, 0.45)), shade, tuple(x * 0.55 for x in colour))
    foot = r.math("ADD", z, r.math("MULTIPLY", stain, 0.5))
    shade = r.mix(r.ramp(foot, (0.15, 0.6), (0.7, 0.0)), shade, (0.22, 0.2, 0.18))
    height = r.math("ADD", r.math("SUBTRACT", 1.0, brick.outputs[1]), r.math("MULTIPLY", fine, 0.35))
    return r.finish(Base_Color=shade, Roughness=0.75, Normal=r.bump(0.55, 0.008, height))


def glow(name, colour, strength, blotches=0.0):
    """A surface that gives light of its own; `blotches` is the scale of dark patches in it."""
    r = Recipe(name)
    shade = (*colour, 1)
    if blotches:
        patch = r.noise(r("TexCoord").outputs["Object"], blotches, 8.0, 0.75)
        shade = r.mix(r.ramp(patch, (0.40, 0.85), (0.62, 0.0)), shade, tuple(c * 0.15 for c in colour))
    emission = r("Emission", {0: shade, 1: strength})
    r.tree.links.new(emission.outputs[0], r.tree.nodes["Material Output"].inputs[0])
    return r.material


def printed(path):
    """Paper that carries the picture at `path`."""
    r = Recipe("paper print")
    image = r("TexImage", {"Vector": r("UVMap", uv_map="grain").outputs[0]})
    image.image = bpy.data.images.load(path)
    age = r.math("MULTIPLY", r.noise(r("TexCoord").outputs["Object"], 4.0, 5.0), 0.2)
    return r.finish(Base_Color=r.mix(age, image.outputs[0], (0.62, 0.52, 0.36), "MULTIPLY"), Roughness=0.8)


def mix_all():
    M.clear()
    M.update(
        ply=wood("ply", (0.52, 0.29, 0.165), (0.33, 0.155, 0.08), 0.6, ring=9.0, glue=True),
        coated=wood("coated ply", (0.42, 0.20, 0.095), (0.25, 0.10, 0.045), 0.2, coat=0.8, ring=9.0),
        fir=wood("fir", (0.62, 0.42, 0.22), (0.42, 0.24, 0.10), 0.6, ring=30.0),
        pine=wood("pine", (0.66, 0.49, 0.29), (0.47, 0.30, 0.14), 0.65, ring=18.0),
        mould=wood("mould", (0.50, 0.38, 0.24), (0.40, 0.28, 0.16), 0.75, ring=6.0, contrast=0.6),
        oak=wood("oak", (0.42, 0.27, 0.13), (0.25, 0.14, 0.06), 0.5),
        bench=wood("bench", (0.40, 0.27, 0.15), (0.22, 0.135, 0.07), 0.6, ring=14.0, contrast=1.2),
        varnished=wood(
            "varnished oak", (0.50, 0.235, 0.075), (0.25, 0.095, 0.028), 0.25, coat=1.0, ring=12.0
        ),
        varnished_fir=wood(
            "varnished fir", (0.60, 0.33, 0.11), (0.38, 0.17, 0.045), 0.25, coat=1.0, ring=26.0
        ),
        edge=wood("plank edge", (0.22, 0.11, 0.055), (0.10, 0.045, 0.022), 0.5, ring=40.0),
        steel=plain("steel", (0.45, 0.45, 0.46), 0.35, metal=1.0),
        zinc=plain("zinc", (0.55, 0.56, 0.57), 0.3, metal=1.0),
        dark=plain("dark", (0.03, 0.03, 0.032), 0.4),
        red=plain("red", (0.42, 0.03, 0.02), 0.35, coat=0.4),
        orange=plain("orange", (0.75, 0.20, 0.02), 0.4),
        blue=plain("blue", (0.05, 0.11, 0.24), 0.45),
        green=plain("green", (0.05, 0.12, 0.075), 0.5),
        yellow=plain("yellow", (0.75, 0.5, 0.03), 0.45),
        white=plain("white", (0.72, 0.70, 0.66), 0.5),
        cream=plain("cream", (0.72, 0.66, 0.52), 0.3, coat=0.6, dirt=0.05),
        card=plain("card", (0.42, 0.29, 0.17), 0.8),
        sanded=wood("sanded ply", (0.50, 0.33, 0.215), (0.40, 0.235, 0.15), 0.85, ring=9.0, contrast=0.7),
        primer=plain("primer", (0.60, 0.60, 0.57), 0.7, dirt=0.12),
        paint=plain("paint", (0.098, 0.14, 0.108), 0.24, coat=0.7, dirt=0.06),
        faded=plain("faded blue", (0.13, 0.19, 0.26), 0.55),
        rust=plain("rust red", (0.28, 0.085, 0.05), 0.6),
        film=plain("cling film", (0.9, 0.9, 0.88), 0.08, clear=0.92, dirt=0.0),
        lead=plain("lead", (0.16, 0.16, 0.17), 0.5, metal=0.7, dirt=0.6),
        brick=plain("brick", (0.30, 0.11, 0.065), 0.9, dirt=0.5),
        string=plain("string", (0.75, 0.70, 0.55), 0.9),
        tape=plain("masking tape", (0.62, 0.50, 0.28), 0.7, dirt=0.1),
        dust=plain("dust", (0.58, 0.42, 0.27), 0.95, dirt=0.1),
        plastic=plain("plastic", (0.80, 0.80, 0.78), 0.35, clear=0.25, dirt=0.05),
        resin=plain("resin", (0.55, 0.30, 0.07), 0.12, clear=0.55, dirt=0.05),
        burnt=plain("burnt resin", (0.30, 0.11, 0.015), 0.25, clear=0.3, dirt=0.6),
        glove=plain("glove", (0.10, 0.22, 0.50), 0.45, dirt=0.2),
        cloth=plain("sailcloth", (0.22, 0.052, 0.028), 0.85, dirt=0.1),
        pegboard=plain("pegboard", (0.33, 0.22, 0.13), 0.7),
        rope=plain("rope", (0.62, 0.52, 0.36), 0.85),
        ceiling=plain("ceiling", (0.60, 0.58, 0.54), 0.85),
        concrete=concrete(),
        blocks=block_wall(),
    )
