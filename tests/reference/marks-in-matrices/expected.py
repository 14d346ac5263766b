"""Expected values of cases.json: what the marks of a lens measure, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Rational, atan, pi, solve

from chain import image_side, lenses, magnification, through, x
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"
sensor_width = 36


def focused(lens, distance):
    """How far ahead of its front glass the subject is, and behind its back glass the sensor, so far apart in all: the lens nearer to the sensor."""
    both = solve(through(distance - lens.apart - x, *lens.glass, x).B, x)
    behind = min(both)
    return distance - lens.apart - behind, behind


def far_angle(lens):
    """Between the two rays from far away that come to the sides of the sensor, through the middle of the stop, the lens at infinity."""
    to_stop, whole = through(*lens.to_stop), through(*lens.glass, lens.back_focus)
    # A ray of slope 1 that passes the middle of the stop starts this high on the front glass.
    height = -to_stop.B / to_stop.A
    at_sensor = whole.A * height + whole.B
    return 2 * atan(Rational(sensor_width, 2) / abs(at_sensor))


def case(index, name, distance, rim, register):
    """The lens focused at a distance from the sensor, its rim ahead of the front glass, on a camera of that register."""
    lens = lenses[name]
    ahead, behind = focused(lens, distance)
    assert abs(image_side(lens.glass, ahead) - behind) < Rational(1, 10**12)
    m = magnification(lens.glass, ahead, behind)
    barrel = behind + lens.apart + rim - register
    inputs = {
        "focalLength": printed(lens.focal_length, "mm"),
        "fNumber": printed(lens.f_number),
        "pupilMagnification": printed(lens.pupil_magnification),
        "principalSeparation": printed(lens.principal_separation, "mm"),
        "focusDistance": printed(distance, "mm"),
        "registerDistance": printed(register, "mm"),
        "barrelLength": printed(barrel, "mm"),
        "sensorWidth": f"{sensor_width} mm",
    }
    expected = {
        "entrancePupil": printed(abs(lens.entrance_pupil), "mm"),
        "exitPupil": printed(abs(lens.exit_pupil), "mm"),
        "angleOfView": printed(far_angle(lens) * 180 / pi, "°"),
        "magnification": printed(m),
        "focusTravel": printed(behind - lens.back_focus, "mm"),
        "fieldWidth": printed(sensor_width / m, "mm"),
        "workingDistance": printed(ahead - rim, "mm"),
    }
    title = f"A {name} lens focused {distance} mm from the sensor"
    return row(f"marks-{index}", title, source, inputs, expected, {"relative": 1e-10}, because)


write(
    __file__,
    [
        case(1, "nearly symmetric", 440, 5, 44),
        case(2, "nearly symmetric", 2000, 5, 44),
        case(3, "retrofocus", 355, 6, 44),
        case(4, "retrofocus", 900, 6, 44),
        case(5, "telephoto", 1000, 4, 18),
        case(6, "telephoto", 5000, 4, 18),
        case(7, "short", 300, 8, 44),
        case(8, "short", 50000, 8, 44),
    ],
)
