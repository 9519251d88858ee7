"""Renders the sample journal's pictures.

    blender -b -t 1 -P render.py -- JOURNAL [--samples 8] [--width 1280] [NAME ...]

NAME is a scene's name; without one, every picture that is not there yet is made.
"""

import argparse
import random
import sys
import tempfile
import time
from pathlib import Path

import bpy
import numpy as np
from mathutils import Vector

sys.path.insert(0, str(Path(__file__).parent))

import develop  # noqa: E402
import materials  # noqa: E402
from shots import SHOTS  # noqa: E402

FAR = 20.0  # metres at which the mist pass is full


def main(arguments):
    parser = argparse.ArgumentParser(prog="render.py")
    parser.add_argument("journal", type=Path)
    parser.add_argument("names", nargs="*")
    parser.add_argument("--samples", type=int, default=8)
    parser.add_argument("--width", type=int, default=1280, help="pixels of the longer side")
    options = parser.parse_intermixed_args(arguments)
    unknown = set(options.names) - {shot.scene.__name__ for shot in SHOTS}
    if unknown:
        parser.error(f"no such scene: {', '.join(sorted(unknown))}")
    for shot in SHOTS:
        path = options.journal / shot.path
        wanted = shot.scene.__name__ in options.names if options.names else not path.exists()
        if wanted:
            start = time.time()
            take(shot, path, options)
            print(
                f"{shot.scene.__name__}: {time.time() - start:.0f} s, {path.stat().st_size // 1000} kB",
                flush=True,
            )


def take(shot, path, options):
    bpy.ops.wm.read_factory_settings(use_empty=True)
    random.seed(shot.seed)
    materials.mix_all()
    view = shot.scene()
    aim(view)
    scene = expose(shot, view, options)
    with tempfile.TemporaryDirectory() as folder:
        passes = render(scene, folder)
        image = develop.lens(
            develop.denoise(
                passes["Image"], passes["DiffCol"], passes["Normal"], passes["Mist"][..., 0] * FAR + 0.05
            )
        )
        image = develop.sensor(tone_mapped(image, scene, folder), len(shot.path))
    develop.jpeg(image, path, shot.orientation)
    develop.exif(shot, path)


def aim(view):
    camera = bpy.data.cameras.new("phone")
    obj = bpy.data.objects.new("phone", camera)
    bpy.context.collection.objects.link(obj)
    camera.sensor_width, camera.lens, camera.clip_start = 36, view.lens, 0.02
    obj.location = view.place
    turn = (Vector(view.target) - Vector(view.place)).to_track_quat("-Z", "Y").to_euler()
    turn.rotate_axis("Z", np.radians(view.roll))
    obj.rotation_euler = turn
    if view.stop:
        camera.dof.use_dof, camera.dof.aperture_fstop = True, view.stop
        camera.dof.focus_distance = (Vector(view.focus or view.target) - Vector(view.place)).length
    bpy.context.scene.camera = obj


def expose(shot, view, options):
    scene = bpy.context.scene
    world = bpy.data.worlds.new("dusk")
    world.use_nodes = True
    background = world.node_tree.nodes["Background"].inputs
    background[0].default_value, background[1].default_value = (0.5, 0.6, 0.8, 1), 0.08
    world.mist_settings.start, world.mist_settings.depth, world.mist_settings.falloff = 0, FAR, "LINEAR"
    scene.world = world
    size = (options.width, options.width * 3 // 4)
    render, cycles = scene.render, scene.cycles
    render.engine, render.resolution_x, render.resolution_y = "CYCLES", *(
        size[::-1] if shot.upright else size
    )
    render.resolution_percentage = 100
    cycles.device, cycles.samples, cycles.use_denoising = "CPU", options.samples, False
    cycles.use_adaptive_sampling, cycles.adaptive_threshold = True, 0.02
    cycles.adaptive_min_samples = min(16, options.samples)
    cycles.max_bounces, cycles.diffuse_bounces, cycles.glossy_bounces, cycles.transmission_bounces = (
        6,
        3,
        2,
        5,
    )
    cycles.caustics_reflective = cycles.caustics_refractive = False
    cycles.sample_clamp_indirect, cycles.sample_clamp_direct, cycles.blur_glossy = 3.0, 20.0, 1.0
    look = scene.view_settings
    look.view_transform, look.look, look.exposure = "Filmic", "High Contrast", view.exposure - 0.15
    return scene


def render(scene, folder):
    """Renders and returns the passes as float arrays by name."""
    layer = bpy.context.view_layer
    layer.use_pass_diffuse_color = layer.use_pass_normal = layer.use_pass_mist = True
    scene.use_nodes = True
    tree = scene.node_tree
    tree.nodes.clear()
    source, files = tree.nodes.new("CompositorNodeRLayers"), tree.nodes.new("CompositorNodeOutputFile")
    files.base_path, files.format.file_format = folder, "OPEN_EXR"
    files.format.color_depth, files.format.color_mode = "32", "RGBA"
    files.file_slots.clear()
    names = ("Image", "DiffCol", "Normal", "Mist")
    for name in names:
        files.file_slots.new(name)
        tree.links.new(source.outputs[name], files.inputs[name])
    tree.links.new(source.outputs["Image"], tree.nodes.new("CompositorNodeComposite").inputs[0])
    bpy.ops.render.render(write_still=False)
    return {name: pixels(Path(folder) / f"{name}{scene.frame_current:04d}.exr") for name in names}


def pixels(path):
    image = bpy.data.images.load(str(path))
    image.colorspace_settings.name = "Non-Color"
    width, height = image.size
    values = np.empty(width * height * 4, np.float32)
    image.pixels.foreach_get(values)
    bpy.data.images.remove(image)
    return values.reshape(height, width, 4)[..., :3].copy()


def tone_mapped(image, scene, folder):
    """Linear light to display values, by Blender's own film curve."""
    height, width = image.shape[:2]
    canvas = bpy.data.images.new("developed", width, height, float_buffer=True)
    canvas.colorspace_settings.name = "Linear"
    canvas.pixels.foreach_set(np.dstack([image, np.ones((height, width))]).astype(np.float32).ravel())
    canvas.update()
    out = scene.render.image_settings
    out.file_format, out.color_mode, out.color_depth = "PNG", "RGB", "16"
    path = Path(folder) / "developed.png"
    canvas.save_render(str(path), scene=scene)
    return pixels(path)


main(sys.argv[sys.argv.index("--") + 1 :])
