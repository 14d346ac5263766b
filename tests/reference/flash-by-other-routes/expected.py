"""Expected values of cases.json: fall-off by solid angles, curtains by lines, stops by the light on the sensor.

Run: python3 expected.py   (Python 3, sympy 1.14.0, numpy 2.4.6), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import numpy
import sympy
from sympy import Line, Point, Rational, atan, log, sqrt

from rows import printed, row, write

solid_angles = f"sympy {sympy.__version__}, solid angle of a rectangle, run here"
lines = f"sympy {sympy.__version__}, sympy.geometry, run here"
light = f"numpy {numpy.__version__}, run here"


def solid_angle(side, distance):
    """Of a square seen from before its middle: 4 atan(a b / (d sqrt(a² + b² + d²))) for half sides a and b."""
    half = Rational(side) / 2
    return 4 * atan(half**2 / (distance * sqrt(2 * half**2 + distance**2)))


def behind(index, flash, background):
    """A flash sends its light evenly: what a small square gets of it goes as the solid angle that it fills."""
    side = Rational(flash, 1000)
    stops = log(solid_angle(side, flash) / solid_angle(side, flash + background), 2)
    inputs = {"flashDistance": f"{flash} mm", "backgroundDistance": f"{background} mm"}
    expected = {"backgroundUnderexposure": printed(stops.evalf(30))}
    title = f"a flash {flash} mm before a subject, the background {background} mm behind it"
    because = "a square a thousandth of the distance wide: its corners are a millionth darker than its middle"
    return row(f"behind-solid-angle-{index}", title, solid_angles, inputs, expected, 1e-5, because)


def curtains(index, set_time, sync):
    """Place against time: both curtains run at one slope; where is the second when the first arrives?"""
    second = Line(Point(set_time, 0), slope=1 / sync)
    at = second.intersection(Line(Point(sync, 0), Point(sync, 1)))[0].y
    inputs = {"exposureTime": f"{float(set_time):.15g} s", "syncSpeed": f"{float(sync):.15g} s"}
    title = f"shutter set to {set_time} s, curtains that take {sync} s"
    because = "exact there, printed to fifteen digits"
    return row(f"curtains-lines-{index}", title, lines, inputs, {"covered": printed(at.evalf(20))}, {"relative": 1e-12}, because)


def short(index, works, suits, needed, shutter):
    """Light on the sensor as 1/N² and as time, over what a full exposure needs."""
    inputs = {
        "effectiveFNumber": works,
        "flashEffectiveFNumber": suits,
        "neededTime": f"{needed} s",
        "shutterTime": f"{shutter} s",
    }
    flash = numpy.float64(works) ** -2 / numpy.float64(suits) ** -2
    ambient = numpy.float64(shutter) / numpy.float64(needed)
    expected = {
        "flashUnderexposure": printed(-numpy.log2(flash)),
        "ambientUnderexposure": printed(-numpy.log2(ambient)),
        "ambientShare": printed(ambient / (1 + ambient)),
    }
    title = f"works as f/{works}, the flash suits f/{suits}; {shutter} s where daylight needs {needed} s"
    return row(f"short-by-light-{index}", title, light, inputs, expected, 1e-11, "the same light by another route; the arithmetic rounds")


write(
    __file__,
    [behind(1, 150, 300), behind(2, 75, 300), behind(3, 1000, 40)]
    + [curtains(1, Rational(1, 1000), Rational(1, 200)), curtains(2, Rational(1, 320), Rational(1, 200)), curtains(3, Rational(1, 250), Rational(1, 250))]
    + [short(1, 23.94, 11.67, 0.125, 0.005), short(2, 8, 26, 0.0017, 0.0125)],
)
