"""Expected values of the rows of cases.json that sympy computes: converters behind lenses, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file. The published rows in published.json come first.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Rational
from sympy.physics.optics import ThinLens

from chain import effective_f_number, lenses, magnification, subject_side
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"


def case(index, name, factor, racked, ring, behind):
    """A thin converter 30 mm before the image of the lens; the lens racked out, on a ring before it, a ring behind it."""
    lens, factor = lenses[name], Rational(factor)
    within = Rational(30)
    # It throws what would lie *within* behind it *factor* times as far back.
    converter = ThinLens(-factor * within / (factor - 1))
    extra = racked + ring
    to_converter = lens.back_focus - within + extra
    sensor = factor * within + behind
    chain = [*lens.glass, to_converter, converter]
    ahead = subject_side(chain, sensor)
    after_stop = [*lens.from_stop, to_converter, converter]
    m = magnification(chain, ahead, sensor)
    inputs = {
        "converterFactor": printed(factor),
        "focalLength": printed(lens.focal_length, "mm"),
        "fNumber": printed(lens.f_number),
        "pupilMagnification": printed(lens.pupil_magnification),
        "ringBehind": printed(behind, "mm"),
        "extension": printed(ring, "mm"),
        "frontPrincipalDepth": printed(lens.front_principal_depth, "mm"),
        # It moves the image back by so much, and that is its length.
        "converterLength": printed((factor - 1) * within, "mm"),
        "focusMagnification": printed(Rational(racked) / lens.focal_length),
    }
    expected = {
        "magnification": printed(m),
        "magnificationByBothSides": printed(m),
        "effectiveFNumber": printed(effective_f_number(lens.to_stop, after_stop, lens.hole, ahead, sensor)),
        "workingDistance": printed(ahead, "mm"),
    }
    title = f"a {name} lens racked out {racked} mm, ring of {ring} mm, {float(factor):g}x converter, ring of {behind} mm behind it"
    return row(f"converter-matrix-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


setups = [
    ("nearly symmetric", "2", 0, 20, 0),
    ("nearly symmetric", "1.4", 10, 0, 0),
    ("retrofocus", "2", 4, 12, 0),
    ("telephoto", "1.4", 0, 50, 0),
    ("nearly symmetric", "2", 0, 0, 25),
    ("telephoto", "1.4", 0, 0, 36),
    ("nearly symmetric", "2", 50, 0, 36),
    ("retrofocus", "2", 0, 12, 24),
    ("telephoto", "1.7", 30, 20, 50),
]
published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
write(__file__, published + [case(index, *setup) for index, setup in enumerate(setups, 1)])
