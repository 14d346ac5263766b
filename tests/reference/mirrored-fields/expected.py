"""Expected values of cases.json: what a tilted flat mirror shows a camera, by lines in a plane.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Line, Point, Rational, cos, pi, sin, tan

from rows import printed, row, write

source = f"sympy {sympy.__version__}, sympy.geometry, run here"
because = "the same straight lines, thirty digits there, printed to fifteen"


def reflected(line, mirror):
    """A ray after the mirror: through the point it meets, towards the reflection of a point it came from."""
    met = line.intersection(mirror)[0]
    came = line.p1.reflect(mirror)
    return Line(met, met + (met - came))


def case(index, field, light, pupil_distance, pupil, degrees):
    """Camera on the negative axis, mirror through the origin, its normal *degrees* from the axis: the rays of all ends, traced to the light."""
    width, light = Rational(field), Rational(light)
    ahead, opening = Rational(pupil_distance), Rational(pupil)
    angle = pi * degrees / 180
    # The normal is turned by the angle from the line to the camera, so the mirror is turned from upright by as much.
    mirror = Line(Point(0, 0), Point(sin(angle).evalf(40), cos(angle).evalf(40)))
    # The axis after the mirror leads away from the camera's image in it; the light's plane is square to it.
    image = Point(-1, 0).reflect(mirror)
    middle = Point(*(-(light * part) for part in image.args)).evalf(40)
    across = Point(-middle.y, middle.x)
    plane = Line(middle, middle + across)
    lands = []
    for x in (-width / 2, width / 2):
        for p in (-opening / 2, opening / 2):
            ray = Line(Point(-ahead, p), Point(0, x))
            back = reflected(ray, mirror)
            lands.append(back.intersection(plane)[0].evalf(40))
    # Signed distances from the light's middle along its plane.
    unit = across / across.distance(Point(0, 0))
    along = [((land - middle).dot(unit)).evalf(40) for land in lands]
    # Rays square to the sharp plane through both sides of the field, to the mirror: how far apart along the axis.
    sides = [Line(Point(-1, x), Point(0, x)).intersection(mirror)[0].x for x in (-width / 2, width / 2)]
    inputs = {
        "fieldWidth": printed(width, "mm"),
        "flashDistance": printed(light, "mm"),
        "entrancePupilDistance": printed(ahead, "mm"),
        "entrancePupil": printed(opening, "mm"),
        "incidenceAngle": f"{degrees} °",
    }
    expected = {
        "sourceSize": printed(2 * max(abs(each) for each in along), "mm"),
        "subjectDepth": printed(abs(sides[0] - sides[1]).evalf(30), "mm"),
    }
    title = f"a mirror at {degrees}°, {field} mm of it seen from {pupil_distance} mm, the light {light} mm off"
    return row(f"mirror-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


setups = [
    ("72", "100", "254", "10", 30),
    ("60", "300", "200", "25", 12),
    ("24", "50", "120", "4", 45),
    ("40", "250", "90", "12", 20),
    ("150", "400", "1000", "30", 55),
]
write(__file__, [case(index, *setup) for index, setup in enumerate(setups, 1)])
