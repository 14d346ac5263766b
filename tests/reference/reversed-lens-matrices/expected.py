"""Expected values of cases.json: lenses turned round, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy

from chain import effective_f_number, lenses, magnification, subject_side
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"


def case(index, name, register, extension, own_register):
    """The front glass faces the sensor, a register and an extension away; the lens's own flange faces the subject."""
    lens = lenses[name]
    sensor = register + extension
    glass = lens.reversed_glass()
    ahead = subject_side(glass, sensor)
    # The way from the back glass to the stop, and from there on past the front glass.
    to_stop, from_stop = lens.from_stop[::-1], lens.to_stop[::-1]
    # Its flange stands its own register before where it has its image of infinity.
    flange = lens.back_focus - own_register
    inputs = {
        "registerDistance": printed(register, "mm"),
        "extension": printed(extension, "mm"),
        "reversedLensRegisterDistance": printed(own_register, "mm"),
        "focalLength": printed(lens.focal_length, "mm"),
        "frontPrincipalDepth": printed(lens.front_principal_depth, "mm"),
        "pupilMagnification": printed(lens.pupil_magnification),
        "fNumber": printed(lens.f_number),
    }
    expected = {
        "magnification": printed(magnification(glass, ahead, sensor)),
        "extension": printed(extension, "mm"),
        "workingDistance": printed(ahead - flange, "mm"),
        "entrancePupilDistance": printed(ahead - lens.exit_beyond, "mm"),
        "entrancePupil": printed(lens.exit_pupil, "mm"),
        "effectiveFNumber": printed(effective_f_number(to_stop, from_stop, lens.hole, ahead, sensor)),
    }
    title = f"a {name} lens turned round, {extension} mm from a flange with a register of {register} mm"
    tolerance = {key: {"relative": 1e-10 if key == "extension" else 1e-12} for key in expected}
    reason = f"{because}; the extension is what two near lengths leave"
    return row(f"reversed-matrix-{index}", title, source, inputs, expected, tolerance, reason)


setups = [
    ("nearly symmetric", 44, 20, 44),
    ("retrofocus", 44, 12, 44),
    ("short", 18, 6, 18),
    ("short", 44, 30, 46),
    ("retrofocus", 44, 60, 42),
]
write(__file__, [case(index, *setup) for index, setup in enumerate(setups, 1)])
