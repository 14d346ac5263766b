"""Expected values of the rows of cases.json that a library computes: how much of a sensor a subject takes, and how deep a lens closed to a cone is sharp, and a stack of frames.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file. The published rows in published.json come first.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Rational, nsolve, symbols

from chain import effective_f_number, image_side, lenses, magnification, through
from rows import printed, row, write

sets = f"sympy {sympy.__version__}, sympy.sets, run here"
matrices = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"


def focused(name, ahead):
    lens = lenses[name]
    sensor = image_side(lens.glass, ahead)
    return lens, sensor, magnification(lens.glass, ahead, sensor)


def fill(index, name, ahead, sensor_width, share):
    """A subject whose rays from both its edges meet the sensor so far apart as the share asks for: how wide it is is traced."""
    lens, sensor, size = focused(name, ahead)
    height = symbols("height")
    landed = through(ahead, *lens.glass, sensor).A * height
    (half,) = sympy.solve(landed + share * sensor_width / 2, height)
    inputs = {
        "frameFill": printed(share),
        "sensorWidth": printed(sensor_width, "mm"),
        "subjectWidth": printed(2 * half, "mm"),
    }
    title = f"a {name} lens, {ahead} mm before its front glass a subject that takes {float(share)} of {float(sensor_width)} mm"
    because = "the same ratio, in exact fractions there, printed to fifteen digits"
    return row(f"fill-{index}", title, matrices, inputs, {"magnification": printed(size)}, {"relative": 1e-12}, because)


def deep(index, name, ahead, blurred, hole):
    """From the near end to the far end of what defocus blurs no wider than so much, at the hole's cone; light and circle are those for which this cone is the rule's.

    There diffraction, the wavelength times the cone's f-number, blurs as much as defocus at the ends, and the circle is the root of both squares.
    """
    lens, sensor, size = focused(name, ahead)
    cone = effective_f_number(lens.to_stop, lens.from_stop, hole, ahead, sensor)
    offset = symbols("offset")
    at = ahead + offset
    # The ray through the rim of the hole, from a point on the axis so much farther off.
    spot = 2 * through(at, *lens.glass, sensor).B * (hole / 2) / through(at, *lens.to_stop).B
    guess = float(cone * blurred / size**2)
    far, near = (nsolve(spot - side * blurred, offset, side * sign * guess, prec=30) for side, sign in ((1, 1), (-1, 1)))
    depth = abs(far - near)
    wavelength = blurred / cone
    circle = sympy.sqrt(blurred**2 + (wavelength * cone) ** 2)
    inputs = {
        "circleOfConfusion": printed(circle, "mm"),
        "wavelength": printed(wavelength, "mm"),
        "magnification": printed(size),
    }
    expected = {"effectiveFNumber": printed(cone), "subjectDepth": printed(depth, "mm")}
    title = f"a {name} lens, {ahead} mm before its front glass the sharp plane, closed to a hole of {float(hole)} mm"
    because = "the close-up form leaves out a term of (c/mD)², below a ten-thousandth here"
    return row(f"deep-{index}", title, matrices, inputs, expected, {"relative": 2e-4}, because)


def stacked(index, depth, count, overlap):
    """How much of a line so many pieces of it cover, each laid over a part of the one before: the measure of their union."""
    step = depth * (1 - overlap)
    union = sympy.Union(*(sympy.Interval(at * step, at * step + depth) for at in range(count)))
    inputs = {"depthOfField": printed(depth, "mm"), "frameCount": count, "overlap": printed(overlap)}
    title = f"{count} frames of {float(depth)} mm that share {float(overlap)} with the one before"
    expected = {"stackedDepth": printed(union.measure, "mm")}
    because = "the same sum, in exact fractions there, printed to fifteen digits"
    return row(f"stacked-{index}", title, sets, inputs, expected, {"relative": 1e-12}, because)


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [
    fill(1, "nearly symmetric", Rational(100), Rational(36), Rational(1, 2)),
    fill(2, "retrofocus", Rational(60), Rational(47, 2), Rational(7, 10)),
    fill(3, "telephoto", Rational(400), Rational(36), Rational(9, 10)),
    deep(1, "nearly symmetric", Rational(70), Rational(14, 1000), Rational(4)),
    deep(2, "retrofocus", Rational(45), Rational(9, 1000), Rational(4)),
    deep(3, "telephoto", Rational(400), Rational(14, 1000), Rational(6)),
    stacked(1, Rational(16, 100), 16, Rational(1, 4)),
    stacked(2, Rational(7, 100), 23, Rational(3, 10)),
    stacked(3, Rational(5, 10), 2, Rational(0)),
]
write(__file__, published + computed)
