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

from chain import effective_f_number, lenses, magnification, subject_side
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
        "mainLensFNumber": printed(main.f_number),
        "reversedLensFNumber": printed(turned.f_number),
    }
    # Each stop by itself would let pass a cone: the more slender one gets through both.
    by_main = effective_f_number(
        [*turned.reversed_glass(), gap, *main.to_stop], main.from_stop, main.hole, ahead, main.back_focus
    )
    by_turned = effective_f_number(
        [turned.back, turned.apart - turned.stop],
        [turned.stop, turned.front, gap, *main.glass],
        turned.hole,
        ahead,
        main.back_focus,
    )
    expected = {
        "magnification": printed(magnification(chain, ahead, main.back_focus)),
        "effectiveFNumber": printed(max(by_main, by_turned)),
    }
    title = f"{float(turned.focal_length):.0f} mm turned round on {float(main.focal_length):.0f} mm, {gap} mm between them"
    return row(f"coupled-matrix-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


def objective(index, engraved, tube, behind, gap, aperture):
    """An objective that with its own tube lens magnifies as engraved, before another lens at infinity; its stop is in its rear focal plane."""
    lens = lenses[behind]
    focal_length = Rational(tube) / engraved
    chain = [ThinLens(focal_length), gap, *lens.glass]
    ahead = subject_side(chain, lens.back_focus)
    inputs = {
        "objectiveMagnification": printed(engraved),
        "tubeFocalLength": printed(tube, "mm"),
        "focalLength": printed(lens.focal_length, "mm"),
        "numericalAperture": printed(aperture),
        "fNumber": printed(lens.f_number),
    }
    by_objective = effective_f_number(
        [ThinLens(focal_length), focal_length],
        [gap - focal_length, *lens.glass],
        2 * focal_length * aperture,
        ahead,
        lens.back_focus,
    )
    by_lens = effective_f_number(
        [ThinLens(focal_length), gap, *lens.to_stop], lens.from_stop, lens.hole, ahead, lens.back_focus
    )
    expected = {
        "magnification": printed(magnification(chain, ahead, lens.back_focus)),
        "effectiveFNumber": printed(max(by_objective, by_lens)),
    }
    title = f"an objective of {engraved}x on {tube} mm, before a lens of {float(lens.focal_length):.0f} mm"
    return row(f"objective-matrix-{index}", title, source, inputs, expected, {"relative": 1e-12}, because)


published = json.loads((Path(__file__).parent / "published.json").read_text(encoding="utf-8"))
computed = [
    coupled(1, "telephoto", "nearly symmetric", 6),
    coupled(2, "telephoto", "retrofocus", 30),
    coupled(3, "nearly symmetric", "short", 2),
    objective(1, 10, 200, "telephoto", 40, Rational(1, 4)),
    objective(2, 4, 200, "nearly symmetric", 80, Rational(1, 20)),
    objective(3, 20, 180, "telephoto", 0, Rational(2, 5)),
    objective(4, 10, 200, "short", 30, Rational(3, 10)),
    coupled(4, "telephoto", "short", 2),
]
write(__file__, published + computed)
