"""Expected values of cases.json: where a close-up lens of one glass brings blue and red, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Rational
from sympy.physics.optics import ThinLens

from chain import lenses, magnification, subject_side, through
from close_up import CloseUp
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"


def case(index, name, gap, power, abbe, ahead):
    """A lens focused *ahead* of its front glass, then one of so many dioptres *gap* before it; the ray at the rim of the stop, in both colours."""
    rig = CloseUp(name, gap, power, abbe, ahead)
    lens = rig.lens
    # A point on the axis in the sharp plane of red, its ray through the rim of the stop, as the power changes.
    slope = (lens.hole / 2) / through(rig.working, rig.coloured, gap, *lens.to_stop).B
    height = through(rig.working, rig.coloured, gap, *lens.glass, rig.sensor).B * slope
    expected = rig.expected() | {"colourBlur": printed(2 * rig.by_colour(height), "mm")}
    title = f"+{power} dpt of V = {abbe}, {gap} mm before a {name} lens {rig.where()}"
    return row(f"blue-and-red-matrix-{index}", title, source, rig.inputs(), expected, {"relative": 1e-12}, because)


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
