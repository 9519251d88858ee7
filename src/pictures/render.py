"""Renders what the sample journal's pictures are developed from: light, surface colour, normals, depth.

    blender -b -t 1 -P render.py -- PASSES [--samples 8] [--width 1600] [NAME ...]

Writes PASSES/NAME.npz for each picture that has none there, or for the scenes named; `develop.py` makes
JPEGs of them.
"""

import argparse
import json
import random
import sys
import tempfile
import time
from dataclasses import asdict
from pathlib import Path

import bpy
import numpy as np
from mathutils import Vector

sys.path.insert(0, str(Path(__file__).parent))

import light  # noqa: E402
import materials  # noqa: E402
from shots import SHOTS  # noqa: E402

FAR = 20.0  # metres at which the mist pass is full
PASSES = ("Image", "DiffCol", "Normal", "Mist")


def main(arguments):
    parser = argparse.ArgumentParser(prog="render.py")
    parser.add_argument("passes", type=Path)
    parser.add_argument("names", nargs="*")
    parser.add_argument("--samples", type=int, default=8)
    parser.add_argument("--width", type=int, default=1600, help="pixels of the longer side")
    options = parser.parse_intermixed_args(arguments)
    unknown = set(options.names) - {shot.name for shot in SHOTS}
    if unknown:
        parser.error(f"no such scene: {', '.join(sorted(unknown))}")
    options.passes.mkdir(parents=True, exist_ok=True)
    for shot in SHOTS:
        out = options.passes / f"{shot.name}.npz"
        if shot.name in options.names or not (options.names or out.exists()):
            start = time.time()
            take(shot, out, options)
            print(f"{shot.name}: {time.time() - start:.0f} s", flush=True)


def take(shot, out, options):
    bpy.ops.wm.read_factory_settings(use_empty=True)
    random.seed(shot.seed)
    materials.mix_all()
    view = shot.scene()
    aim(view)
    scene = prepare(shot, options)
    with tempfile.TemporaryDirectory() as folder:
        layers = render(scene, folder)
    focus = (Vector(view.focus or view.target) - Vector(view.place)).length
    notes = {**asdict(view), "focus": focus}
    part = out.with_suffix(".part.npz")
    np.savez(
        part,
        notes=json.dumps(notes),
        light=layers["Image"].clip(0, 6e4).astype(np.float16),
        colour=layers["DiffCol"].astype(np.float16),
        normal=layers["Normal"].astype(np.float16),
        depth=(layers["Mist"][..., 0] * FAR + 0.02).astype(np.float32),
    )
    part.replace(out)


def aim(view):
    """All is rendered sharp: developing adds the blur of the lens, and has no noise in it to cope with."""
    camera = bpy.data.cameras.new("phone")
    obj = bpy.data.objects.new("phone", camera)
    bpy.context.collection.objects.link(obj)
    camera.sensor_width, camera.lens, camera.clip_start = 36, view.lens, 0.02
    obj.location = view.place
    turn = (Vector(view.target) - Vector(view.place)).to_track_quat("-Z", "Y").to_euler()
    turn.rotate_axis("Z", np.radians(view.roll))
    obj.rotation_euler = turn
    if view.flash:
        beside = obj.rotation_euler.to_matrix() @ Vector((0.02, 0.012, 0))
        light.point(view.flash, Vector(view.place) + beside, light.NOON, 0.006)
    bpy.context.scene.camera = obj


def prepare(shot, options):
    scene = bpy.context.scene
    world = bpy.data.worlds.new("dusk")
    world.use_nodes = True
    background = world.node_tree.nodes["Background"].inputs
    background[0].default_value, background[1].default_value = (0.52, 0.52, 0.50, 1), 0.05
    world.mist_settings.start, world.mist_settings.depth, world.mist_settings.falloff = 0, FAR, "LINEAR"
    scene.world = world
    size = options.width, options.width * 3 // 4
    settings, cycles = scene.render, scene.cycles
    settings.engine = "CYCLES"
    settings.resolution_x, settings.resolution_y = size[::-1] if shot.upright else size
    settings.resolution_percentage = 100
    cycles.device, cycles.samples, cycles.use_denoising = "CPU", options.samples, False
    cycles.use_adaptive_sampling = False
    cycles.max_bounces, cycles.diffuse_bounces, cycles.glossy_bounces = 6, 3, 2
    cycles.transmission_bounces = 5
    # After one bounce the room's mean light stands in for the rest: half the time, darker corners.
    cycles.use_fast_gi, cycles.fast_gi_method, cycles.ao_bounces_render = True, "REPLACE", 1
    world.light_settings.ao_factor, world.light_settings.distance = 5.5, 1.5
    cycles.caustics_reflective = cycles.caustics_refractive = False
    cycles.sample_clamp_indirect, cycles.sample_clamp_direct, cycles.blur_glossy = 3.0, 20.0, 1.0
    return scene


def render(scene, folder):
    """Renders and returns the passes as float arrays by name, last row of the picture first."""
    layer = bpy.context.view_layer
    layer.use_pass_diffuse_color = layer.use_pass_normal = layer.use_pass_mist = True
    scene.use_nodes = True
    tree = scene.node_tree
    tree.nodes.clear()
    source, files = tree.nodes.new("CompositorNodeRLayers"), tree.nodes.new("CompositorNodeOutputFile")
    files.base_path, files.format.file_format = folder, "OPEN_EXR"
    files.format.color_depth, files.format.color_mode = "32", "RGBA"
    files.file_slots.clear()
    for name in PASSES:
        files.file_slots.new(name)
        tree.links.new(source.outputs[name], files.inputs[name])
    tree.links.new(source.outputs["Image"], tree.nodes.new("CompositorNodeComposite").inputs[0])
    bpy.ops.render.render(write_still=False)
    return {name: pixels(Path(folder) / f"{name}{scene.frame_current:04d}.exr") for name in PASSES}


def pixels(path):
    image = bpy.data.images.load(str(path))
    image.colorspace_settings.name = "Non-Color"
    width, height = image.size
    values = np.empty(width * height * 4, np.float32)
    image.pixels.foreach_get(values)
    bpy.data.images.remove(image)
    return values.reshape(height, width, 4)[..., :3].copy()


main(sys.argv[sys.argv.index("--") + 1 :])
