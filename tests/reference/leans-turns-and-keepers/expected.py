"""Expected values of the rows of cases.json that libraries compute: leans, turns, openings for a depth, shares between limits.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file. The published rows in published.json come first.
"""
import json
import platform
import sys
from pathlib import Path
from statistics import NormalDist

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Line, Point, Rational, nsolve, pi, symbols

from chain import image_side, lenses, magnification, through
from rows import printed, row, write

geometry = f"sympy {sympy.__version__}, sympy.geometry, run here"
matrices = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
normal = f"Python {platform.python_version()}, statistics.NormalDist, run here"
lines = "the same lines, in exact fractions there, printed to fifteen digits"


def lean(index, length, near, far, degrees):
    """A slope through the middle of the sharp plane, cut by the two ends of the slab: how far apart the cuts are."""
    slope = Line(Point(0, 0), Point(1, 0).rotate(pi * degrees / 180))
    ends = [slope.intersection(Line(Point(0, y), Point(1, y)))[0] for y in (Rational(far), -Rational(near))]
    inputs = {
        "subjectWidth": printed(length, "mm"),
        "depthOfField": printed(Rational(near) + Rational(far), "mm"),
        "subjectTilt": f"{degrees} °",
    }
    expected = {
        "subjectDepth": printed((length * sympy.sin(pi * degrees / 180)).evalf(20), "mm"),
        "sharpSubjectWidth": printed(min(length, ends[0].distance(ends[1]).evalf(20)), "mm"),
    }
    title = f"a thing {length} mm long that leans by {degrees}°, cut {near} mm before and {far} mm behind the sharp plane"
    return row(f"lean-{index}", title, geometry, inputs, expected, {"relative": 1e-12}, lines)


def turn(index, distance, degrees):
    """A point straight ahead of the pupil, turned about it: where it then is, along the axis, from a plane as far ahead."""
    turned = Point(0, Rational(distance)).rotate(pi * degrees / 180)
    inputs = {"entrancePupilDistance": printed(Rational(distance), "mm"), "turnAngle": f"{degrees} °"}
    expected = {"focusOffset": printed((turned.y - Rational(distance)).evalf(20), "mm")}
    title = f"a point {distance} mm from the pupil, the camera turned by {degrees}°"
    return row(f"turn-{index}", title, geometry, inputs, expected, {"relative": 1e-12}, lines)


def opening(index, name, ahead, circle, depth):
    """The opening of a lens of two glasses with which the blur of the near end and that of the far end of a depth come to the circle."""
    lens = lenses[name]
    sensor = image_side(lens.glass, ahead)
    size = magnification(lens.glass, ahead, sensor)
    hole, near = symbols("hole near")

    def blur(offset):
        """On the sensor, of a point on the axis *offset* farther off: the two rays that just pass the hole, traced."""
        at = ahead + offset
        slope = (hole / 2) / through(at, *lens.to_stop).B
        return 2 * through(at, *lens.glass, sensor).B * slope

    # Both ends at once: blurs alike, of opposite sign, and their distance the depth.
    equations = [blur(depth - near) - circle, blur(-near) + circle]
    solved = nsolve(equations, [hole, near], [float(circle * ahead / (size * depth / 2)) / 2, float(depth) / 2], prec=30)
    f_number = lens.f_number * lens.hole / abs(solved[0])
    inputs = {
        "magnification": printed(size),
        "subjectDepth": printed(depth, "mm"),
        "circleOfConfusion": printed(circle, "mm"),
        "pupilMagnification": printed(lens.pupil_magnification),
    }
    title = f"the {name} lens of two glasses, {ahead} mm from the subject, {float(depth)} mm to be sharp for {float(circle)} mm"
    because = "a finite depth: the close-up form leaves out a term of (c/mD)²"
    return row(f"opening-{index}", title, matrices, inputs, {"fNumber": printed(f_number)}, {"relative": 0.001}, because)


def share(index, limits):
    """Of a normal distribution between limits that are not about its mean."""
    inputs = {"from": [low for low, _ in limits], "to": [high for _, high in limits]}
    cdf = NormalDist().cdf
    expected = {"share": [printed(cdf(high) - cdf(low)) for low, high in limits]}
    title = "shares of a normal distribution between pairs of limits"
    return row(f"between-limits-{index}", title, normal, inputs, expected, 1e-14, "both are good to the last digits of a double near 1")


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [lean(1, 30, "0.7", "0.7", 12), lean(2, 25, "2.1", "2.3", 62), lean(3, 4, "0.9", "0.9", 10)]
computed += [turn(1, "157.8", 5), turn(2, 400, 12), turn(3, 93, 1)]
computed += [
    opening(1, "nearly symmetric", Rational(100), Rational(2, 100), Rational(3, 2)),
    opening(2, "retrofocus", Rational(60), Rational(13, 1000), Rational(1)),
    opening(3, "telephoto", Rational(600), Rational(2, 100), Rational(4)),
]
computed += [share(1, [(-0.35, 0.35), (-0.75, -0.05), (-1.2, 0.4), (0.1, 2.6), (-3, 0.7)])]
write(__file__, published + computed)
