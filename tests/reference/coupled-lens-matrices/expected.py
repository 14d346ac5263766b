"""Expected values of the rows of cases.json that sympy computes: coupled lenses and objectives, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file. The published rows in published.json come first.
"""
import json
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Rational
from sympy.physics.optics import ThinLens

from chain import lenses, magnification, subject_side
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"


def coupled(index, main, turned, gap):
    """A lens turned round before another at infinity, their front glasses so far apart."""
    main, turned = lenses[main], lenses[turned]
    chain = [*turned.reversed_glass(), gap, *main.glass]
    ahead = subject_side(chain, main.back_focus)
    inputs = {
        "mainLensFocalLength": printed(main.focal_length, "mm"),
        "reversedLensFocalLength": printed(turned.focal_length, "mm"),
    }
    expected = {"magnification": printed(magnification(chain, ahead, main.back_focus))}
    title = f"{float(turned.focal_length):.0f} mm turned round on {float(main.focal_length):.0f} mm, {gap} mm between them"
    return row(f"coupled-matrix-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


def objective(index, engraved, tube, behind, gap):
    """An objective that with its own tube lens magnifies as engraved, before another lens at infinity."""
    lens = lenses[behind]
    chain = [ThinLens(Rational(tube) / engraved), gap, *lens.glass]
    ahead = subject_side(chain, lens.back_focus)
    inputs = {
        "objectiveMagnification": printed(engraved),
        "tubeFocalLength": printed(tube, "mm"),
        "focalLength": printed(lens.focal_length, "mm"),
    }
    expected = {"magnification": printed(magnification(chain, ahead, lens.back_focus))}
    title = f"an objective of {engraved}x on {tube} mm, before a lens of {float(lens.focal_length):.0f} mm"
    return row(f"objective-matrix-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [
    coupled(1, "telephoto", "nearly symmetric", 6),
    coupled(2, "telephoto", "retrofocus", 30),
    coupled(3, "nearly symmetric", "short", 2),
    objective(1, 10, 200, "telephoto", 40),
    objective(2, 4, 200, "nearly symmetric", 80),
    objective(3, 20, 180, "telephoto", 0),
]
write(__file__, published + computed)
