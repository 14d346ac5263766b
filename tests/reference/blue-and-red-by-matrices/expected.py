"""Expected values of cases.json: where a close-up lens of one glass brings blue and red, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Abs, Rational, diff
from sympy.physics.optics import ThinLens

from chain import effective_f_number, image_side, lenses, magnification, subject_side, through, x
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"


def case(index, name, gap, power, abbe, ahead):
    """A lens focused *ahead* of its front glass, then one of so many dioptres *gap* before it; the ray at the rim of the stop, in both colours."""
    lens = lenses[name]
    sensor = lens.back_focus if ahead is None else image_side(lens.glass, ahead)
    alone = 0 if ahead is None else magnification(lens.glass, ahead, sensor)
    red = ThinLens(Rational(1000) / power)
    chain = [red, gap, *lens.glass]
    working = subject_side(chain, sensor)
    cone = effective_f_number([red, gap, *lens.to_stop], lens.from_stop, lens.hole, working, sensor)
    # A point on the axis in the sharp plane of red, its ray through the rim of the stop, as the power changes.
    coloured = ThinLens(Rational(1000) / x)
    slope = (lens.hole / 2) / through(working, coloured, gap, *lens.to_stop).B
    height = through(working, coloured, gap, *lens.glass, sensor).B * slope
    blur = 2 * Abs(diff(height, x).subs(x, power)) * power / abbe
    plane = through(coloured, gap, *lens.glass, sensor)
    spread = Abs(diff(-plane.B / plane.A, x).subs(x, power)) * power / abbe
    inputs = {
        "abbeNumber": abbe,
        "closeUpPower": printed(power, "dpt"),
        "focalLength": printed(lens.focal_length, "mm"),
        "focusMagnification": printed(alone),
        "fNumber": printed(lens.f_number),
        "pupilMagnification": printed(lens.pupil_magnification),
    }
    if ahead is not None:
        inputs["mainLensSubjectDistance"] = printed(ahead + lens.front_principal_depth, "mm")
        inputs["closeUpGap"] = printed(gap + lens.front_principal_depth, "mm")
    expected = {
        "magnification": printed(magnification(chain, working, sensor)),
        "workingDistance": printed(working, "mm"),
        "effectiveFNumber": printed(cone),
        "colourSpread": printed(spread, "mm"),
        "colourBlur": printed(blur, "mm"),
    }
    where = "at infinity" if ahead is None else f"focused {ahead} mm ahead of its front glass"
    title = f"+{power} dpt of V = {abbe}, {gap} mm before a {name} lens {where}"
    return row(f"blue-and-red-matrix-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


def power_for(index, name, gap, power):
    """The size that a close-up lens gives on a lens at infinity, and the power that gives it."""
    lens = lenses[name]
    chain = [ThinLens(Rational(1000) / power), gap, *lens.glass]
    size = magnification(chain, subject_side(chain, lens.back_focus), lens.back_focus)
    inputs = {"focalLength": printed(lens.focal_length, "mm"), "magnification": printed(size)}
    title = f"the power that gives {float(size):.3g} on a {name} lens at infinity"
    expected = {"closeUpPower": printed(power, "dpt")}
    return row(f"power-for-size-matrix-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


setups = [
    ("nearly symmetric", 5, 4, 58, None),
    ("retrofocus", 8, 6, 58, None),
    ("telephoto", 10, 4, 58, None),
    ("telephoto", 10, 4, 2000, None),
    ("nearly symmetric", 5, 2, 40, 300),
    ("retrofocus", 8, 10, 64, 250),
    # H of a telephoto lies in front of its glass, and here in front of the close-up lens.
    ("telephoto", 5, 3, 58, 1500),
    ("telephoto", 5, 10, 30, 900),
]
powers = [("nearly symmetric", 5, 3), ("telephoto", 10, 4)]
rows = [case(index, *setup) for index, setup in enumerate(setups, 1)]
write(__file__, rows + [power_for(index, *setup) for index, setup in enumerate(powers, 1)])
