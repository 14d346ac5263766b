"""Expected values of cases.json: streaks of a camera that turns and drifts before a subject that moves, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Rational, cos, diff, integrate, pi, simplify, sin, solve, sqrt, symbols

from chain import image_side, lenses, magnification, through
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
turn, one, two, three, time = symbols("turn one two three time", positive=True)


def landing(lens, ahead, sensor, across, along):
    """Where on the sensor a ray lands that leaves a point *across* the axis, *along* ahead, through the middle of the stop."""
    to_stop = through(along, *lens.to_stop)
    slope = -to_stop.A * across / to_stop.B
    whole = through(along, *lens.glass, sensor)
    return whole.A * across + whole.B * slope


def turned(lens, ahead, sensor, pivot):
    """Streak for one radian of a small turn: the subject as the camera sees it that has turned about a point *pivot* before its sensor."""
    reach = ahead + lens.apart + sensor - pivot
    # In the camera's own frame the subject swings round the pivot.
    across, along = reach * sin(turn), ahead - reach * (1 - cos(turn))
    return abs(diff(landing(lens, ahead, sensor, across, along), turn).subs(turn, 0))


def at_random(streaks):
    """Root of the mean square of streaks that point anywhere, each in a direction of its own."""
    angles = (one, two, three)
    along = sum(streak * cos(angle) for streak, angle in zip(streaks, angles))
    aside = sum(streak * sin(angle) for streak, angle in zip(streaks, angles))
    mean = simplify(along**2 + aside**2).expand()
    for angle in angles:
        mean = integrate(mean, (angle, 0, 2 * pi)) / (2 * pi)
    return sqrt(simplify(mean))


def case(index, name, ahead, about, stops, drift, speed, circle):
    """The lens focused *ahead* of its front glass; what a hundredth of a second draws, and the time that draws the circle."""
    lens = lenses[name]
    sensor = image_side(lens.glass, ahead)
    m = magnification(lens.glass, ahead, sensor)
    total = ahead + lens.apart + sensor
    pivot = 0 if about == "sensor" else total - ahead - lens.entrance_depth
    rate, drift, speed, circle = Rational(1, 50), Rational(drift), Rational(speed), Rational(circle)
    # Drift and walk carry the subject sideways before the lens.
    across = abs(landing(lens, ahead, sensor, 1, ahead))
    second = [turned(lens, ahead, sensor, pivot) * rate / 2**stops, across * drift, across * speed]
    whole = at_random(second)
    (slowest,) = solve(whole * time - circle, time)
    exposure = Rational(1, 100)
    inputs = {
        "focalLength": printed(lens.focal_length, "mm"),
        "principalSeparation": printed(lens.principal_separation, "mm"),
        "pupilMagnification": printed(lens.pupil_magnification),
        "magnification": printed(m),
        "about": about,
        "shakeRate": printed(rate),
        "stabilisation": stops,
        "sidewaysSpeed": printed(drift),
        "subjectSpeed": printed(speed),
        "exposureTime": printed(exposure),
        "circleOfConfusion": printed(circle, "mm"),
    }
    expected = {
        "turning": printed(second[0] * exposure, "mm"),
        "sideways": printed(second[1] * exposure, "mm"),
        "subject": printed(second[2] * exposure, "mm"),
        "together": printed(whole * exposure, "mm"),
        "slowest": printed(slowest, "s"),
    }
    title = f"a {name} lens {ahead} mm from the sharp plane, turned about its {about}"
    because = "the same Gaussian optics, in exact fractions there; inputs and results are rounded to fifteen digits"
    return row(f"turned-{index}", title, source, inputs, expected, {"relative": 1e-11}, because)


setups = [
    ("nearly symmetric", 160, "sensor", 0, "3", "0", "0.02"),
    ("nearly symmetric", 160, "entrance pupil", 0, "3", "5", "0.02"),
    ("retrofocus", 30, "sensor", 4, "1", "0.2", "0.013"),
    ("telephoto", 420, "entrance pupil", 2, "3", "6", "0.02"),
    ("telephoto", 420, "sensor", 0, "0.5", "1", "0.03"),
    ("short", 40, "entrance pupil", 1, "2", "0", "0.015"),
]
write(__file__, [case(index, *setup) for index, setup in enumerate(setups, 1)])
