"""Expected values of the rows of cases.json that sympy computes: room by ray-transfer matrices, an even sky by integration, the
background by lines that meet.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file. The published rows in published.json come first.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Line, Point, Rational, atan, cos, integrate, pi, sin, symbols

from chain import image_side, lenses, magnification
from rows import printed, row, write

fifteen = {"relative": 1e-12}
by_matrices = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
by_integration = f"sympy {sympy.__version__}, sympy.integrate, run here"
by_lines = f"sympy {sympy.__version__}, sympy.geometry, run here"
exact = "exact there, printed to fifteen digits"


def room(index, name, ahead):
    """A lens of two glasses with a point so far ahead of its front glass: which lens leaves that room at that size?"""
    lens = lenses[name]
    large = magnification(lens.glass, ahead, image_side(lens.glass, ahead))
    inputs = {
        "workingDistance": printed(ahead, "mm"),
        "frontPrincipalDepth": printed(lens.front_principal_depth, "mm"),
        "magnification": printed(large),
    }
    title = f"the {name} lens with its front glass {ahead} mm from the subject"
    expected = {"focalLength": printed(lens.focal_length, "mm")}
    return row(f"focal-length-matrix-{index}", title, by_matrices, inputs, expected, fifteen, exact)


def shadow(index, rim, working):
    """Light of a sky of radiance 1 on a level surface, ring by ring from the zenith: within the rim, over all."""
    theta = symbols("theta")
    light = 2 * pi * cos(theta) * sin(theta)
    hidden = integrate(light, (theta, 0, atan(Rational(rim) / 2 / working))) / integrate(light, (theta, 0, pi / 2))
    inputs = {"rimDiameter": printed(Rational(rim), "mm"), "workingDistance": printed(working, "mm")}
    title = f"an even sky, a rim {rim} mm wide and {working} mm up"
    expected = {"lensShadow": printed(hidden.evalf(20))}
    return row(f"shadow-sky-{index}", title, by_integration, inputs, expected, fifteen, exact)


def behind(index, pupil, distance, field, large, beyond):
    """Lines from the middle of the pupil past the ends of the field, and from a far point past the ends of the pupil."""
    sharp = Line(Point(0, 0), Point(0, 1))
    far = Line(Point(-beyond, 0), Point(-beyond, 1))
    middle = Point(distance, 0)
    strip = [far.intersection(Line(middle, Point(0, side * Rational(field) / 2)))[0] for side in (1, -1)]
    point = Point(-beyond, 0)
    patch = [sharp.intersection(Line(point, Point(distance, side * Rational(pupil) / 2)))[0] for side in (1, -1)]
    inputs = {
        "entrancePupil": printed(Rational(pupil), "mm"),
        "entrancePupilDistance": printed(distance, "mm"),
        "fieldWidth": printed(Rational(field), "mm"),
        "magnification": printed(Rational(large)),
        "backgroundDistance": printed(beyond, "mm"),
    }
    expected = {
        "backgroundWidth": printed(strip[0].distance(strip[1]), "mm"),
        "backgroundBlur": printed(Rational(large) * patch[0].distance(patch[1]), "mm"),
    }
    title = f"a pupil {pupil} mm wide, {distance} mm before the subject, the background {beyond} mm behind it"
    return row(f"behind-lines-{index}", title, by_lines, inputs, expected, fifteen, exact)


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [room(1, "nearly symmetric", 160), room(2, "retrofocus", 75), room(3, "telephoto", 420), room(4, "short", 40)]
computed += [shadow(1, 53, 128), shadow(2, 68, 450), shadow(3, 64, 12)]
computed += [behind(1, "8.9", 145, 72, "0.5", 500), behind(2, 25, 513, 72, "0.5", 500), behind(3, 5, 90, 18, 2, 40)]
write(__file__, published + computed)
