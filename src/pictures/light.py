"""What light falls into the garage, and from where, at an hour and a season."""

import math
from dataclasses import dataclass

import bpy
from mathutils import Vector

from materials import M, glow
from room import CEILING, DOOR, LEFT, RIGHT, WINDOW
from solids import beam, box, cylinder, lathe, place, tube

NOON, GOLD, BLUE, LAMP, TUBE = (
    (0.86, 0.93, 1.0),
    (1.0, 0.80, 0.55),
    (0.30, 0.45, 0.95),
    (1, 0.62, 0.30),
    (1.0, 0.90, 0.74),
)


@dataclass(frozen=True)
class Light:
    """Strengths of the lights, 0 where one is out.

    door: daylight through the open door; None: the door is shut; 0: it stands open on the dark.
    sky: colour of the daylight. sun: azimuth (0 straight in at the door, 90 in at the window) and height in
    degrees, and strength. work: where the work lamp stands, what it points at, and its watts.
    """

    door: float = None
    window: float = 0
    tubes: float = 0
    bulb: float = 0
    sky: tuple = NOON
    sun: tuple = None
    work: tuple = None

    def hang(self):
        if self.window:
            _through_window(self.window, self.sky)
        if self.door:
            _area((DOOR - 0.6, 0, 1.15), (0, -90, 0), 2.2, 2.9, self.door * 28, self.sky)
        if self.sun:
            _sun(*self.sun)
        _tubes(self.tubes)
        _bulb(self.bulb)
        if self.work:
            _work_lamp(*self.work)


DAY = Light(door=4.2, window=1.0, tubes=0.4)
OVERCAST = Light(door=2.6, window=0.9, sky=(0.78, 0.88, 1.0))
MORNING = Light(door=3.2, window=0.8, sun=(-24, 20, 10.0))
AFTERNOON = Light(door=2.6, window=0.9, sun=(78, 32, 14.0))
EVENING = Light(door=1.6, window=0.6, bulb=0.7, sky=GOLD, sun=(20, 11, 8.0))
DUSK = Light(door=0.9, window=0.5, bulb=1.6, sky=BLUE)
WINTER = Light(window=1.1, bulb=0.5, sky=(0.70, 0.82, 1.0))
NIGHT = Light(tubes=2.4, bulb=1.2)
ONE_BULB = Light(bulb=4.0)


def _area(at, turn, wide, high, power, colour):
    light = bpy.data.lights.new("area", "AREA")
    light.shape, light.size, light.size_y, light.energy, light.color = "RECTANGLE", wide, high, power, colour
    obj = place(bpy.data.objects.new("area", light))
    obj.location, obj.rotation_euler = at, [math.radians(a) for a in turn]


def _through_window(strength, sky):
    x0, x1, z0, z1 = WINDOW
    _area(((x0 + x1) / 2, RIGHT - 0.03, (z0 + z1) / 2), (-90, 0, 0), 1.15, 0.75, 120 * strength, sky)


def _sun(azimuth, height, strength):
    light = bpy.data.lights.new("sun", "SUN")
    light.energy, light.angle, light.color = strength, math.radians(0.8), (1.0, 0.84, 0.64)
    a, h = math.radians(azimuth), math.radians(height)
    towards = -Vector((-math.cos(a) * math.cos(h), math.sin(a) * math.cos(h), math.sin(h)))
    place(bpy.data.objects.new("sun", light)).rotation_euler = towards.to_track_quat("-Z", "Y").to_euler()


def _tubes(strength):
    for x in (0.9, 3.3):
        box((x, 0.35, CEILING - 0.19), (1.25, 0.09, 0.05), M["white"])
        shine = glow("tube", (1.0, 0.93, 0.80), 14 * strength) if strength else M["white"]
        lamp = cylinder((x, 0.35, CEILING - 0.23), 0.014, 1.2, shine, (0, 90, 0))
        # The area light beside it does the work, with less noise.
        lamp.visible_diffuse = lamp.visible_glossy = False
        if strength:
            _area((x, 0.35, CEILING - 0.25), (0, 0, 0), 1.2, 0.06, 16 * strength, TUBE)


def _bulb(strength):
    x, y, z = 4.6, -1.45, 1.62
    lathe((x, y, z), [(0.02, 0.16), (0.03, 0.15), (0.05, 0.10), (0.11, 0)], M["green"])
    tube([(x, y, z + 0.16), (x, y - 0.1, z + 0.5), (x, LEFT + 0.02, CEILING - 0.5)], 0.004, M["dark"])
    if strength:
        point(22 * strength, (x, y, z), LAMP, 0.03)


def point(power, at, colour, radius):
    light = bpy.data.lights.new("point", "POINT")
    light.energy, light.color, light.shadow_soft_size = power, colour, radius
    place(bpy.data.objects.new("point", light)).location = at


def _work_lamp(at, target, power):
    """A halogen work lamp on a low stand: hard shadows, warm."""
    light = bpy.data.lights.new("work lamp", "SPOT")
    light.energy, light.color, light.spot_size, light.spot_blend = power, (1.0, 0.74, 0.45), 2.2, 0.6
    light.shadow_soft_size = 0.05
    obj = place(bpy.data.objects.new("work lamp", light))
    away = (Vector(target) - Vector(at)).normalized()
    obj.location, obj.rotation_euler = at, away.to_track_quat("-Z", "Y").to_euler()
    back = Vector(at) - away * 0.06
    beam(back - away * 0.05, back, 0.19, 0.13, M["yellow"], bevel=0.006)
    for side in (-0.13, 0.13):
        beam((at[0], at[1] + side, 0.02), back, 0.016, 0.016, M["dark"])
        beam((at[0] - 0.15, at[1] + side, 0.012), (at[0] + 0.15, at[1] + side, 0.012), 0.02, 0.02, M["dark"])
