"""Expected values of cases.json: what lenses with unlike pupils see, by ray-transfer matrices.

Run: python3 expected.py   (Python 3, sympy 1.14.0), then format the file.
"""
import sys
from pathlib import Path
from types import SimpleNamespace

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import sympy
from sympy import Abs, Rational, diff, oo, solve
from sympy.physics.optics import ThinLens

from chain import effective_f_number, image_side, lenses, magnification, subject_side, through, x
from rows import printed, row, write

source = f"sympy {sympy.__version__}, physics.optics.gaussopt, run here"
because = "the same Gaussian optics, in exact fractions there, printed to fifteen digits"


def blur(lens, ahead, sensor):
    """Width on the sensor of the patch of light from a point on the axis *ahead* of the front glass."""
    slope = (lens.hole / 2) / through(ahead, *lens.to_stop).B
    return 2 * through(ahead, *lens.glass, sensor).B * slope


def seen(lens, ahead, sensor):
    """Size on the sensor of what is 1 mm tall, from where the ray through the middle of the stop meets it."""
    to_stop, whole = through(ahead, *lens.to_stop), through(ahead, *lens.glass, sensor)
    return whole.A - whole.B * to_stop.A / to_stop.B


def limits(lens, ahead, sensor, circle):
    """Where, nearer and farther than the sharp plane, the patch is as wide as the circle."""
    roots = [root for sign in (1, -1) for root in solve(blur(lens, x, sensor) - sign * circle, x)]
    return ahead - only_between(roots, 0, ahead), only_between(roots, ahead, oo) - ahead


def case(index, name, ahead, circle, behind, step):
    """The lens focused *ahead* of its front glass, with something *behind* the sharp plane, then moved by a step."""
    lens = lenses[name]
    sensor = image_side(lens.glass, ahead)
    m = magnification(lens.glass, ahead, sensor)
    total = ahead + lens.apart + sensor
    u = ahead + lens.entrance_depth
    circle = Rational(circle)
    near, far = limits(lens, ahead, sensor, circle)
    background = Abs(blur(lens, ahead + behind, sensor))
    # Racked out by x with the sensor standing still: how the scale of the detail and the place of the sharp plane begin to change.
    scale = seen(lens, ahead - x, sensor + x)
    sharp = lens.apart + sensor + x + subject_side_at(lens, sensor)
    # What stands at the sensor's side, 18 mm from its middle, after a step on the rail.
    grown = seen(lens, ahead - Rational(step), sensor) / seen(lens, ahead, sensor)
    growth = Abs(diff(scale, x).subs(x, 0) / scale.subs(x, 0) / diff(sharp, x).subs(x, 0))
    rate, time, stops = Rational(1, 50), Rational(1, 100), 2
    inputs = {
        "focalLength": printed(lens.focal_length, "mm"),
        "fNumber": printed(lens.f_number),
        "pupilMagnification": printed(lens.pupil_magnification),
        "principalSeparation": printed(lens.principal_separation, "mm"),
        "frontPrincipalDepth": printed(lens.front_principal_depth, "mm"),
        "magnification": printed(m),
        "circleOfConfusion": printed(circle, "mm"),
        "backgroundDistance": printed(behind, "mm"),
        "sensorWidth": "36 mm",
        "pixelPitch": "0.006 mm",
        "frameStep": printed(Rational(step), "mm"),
        "shakeRate": printed(rate),
        "exposureTime": printed(time),
        "stabilisation": stops,
    }
    expected = {
        "workingDistance": printed(ahead, "mm"),
        "focusDistance": printed(total, "mm"),
        "entrancePupil": printed(lens.entrance_pupil, "mm"),
        "entrancePupilDistance": printed(u, "mm"),
        "effectiveFNumber": printed(effective_f_number(lens.to_stop, lens.from_stop, lens.hole, ahead, sensor)),
        "nearLimit": printed(near, "mm"),
        "farLimit": printed(far, "mm"),
        "depthOfField": printed(near + far, "mm"),
        "depthCloseUp": printed(near + far, "mm"),
        "backgroundBlur": printed(background, "mm"),
        "backgroundWidth": printed(36 / Abs(seen(lens, ahead + behind, sensor)), "mm"),
        "scaleChangeOnRail": printed(grown - 1),
        "edgeShift": printed((18 * grown - 18) / Rational("0.006")),
        "scaleChangeFocusing": printed(Rational(step) * growth),
        "blurAboutSensor": printed(m * total * rate * time / 2**stops, "mm"),
        "blurAboutPupil": printed(m * u * rate * time / 2**stops, "mm"),
    }
    title = f"a {name} lens with its front glass {ahead} mm from the sharp plane"
    tolerance = {key: {"relative": 1e-11} for key in expected}
    # The short form falls short by this share, to first order; half as much again is allowed.
    short = (circle / (m * lens.entrance_pupil)) ** 2
    tolerance["depthCloseUp"] = {"relative": float(f"{float(short * Rational('1.5')):.6g}")}
    reason = f"{because}; the inputs are rounded to as many digits, and m D - c, u - step are differences; the short form of the depth leaves out (c/(m D))², and may miss half as much again"
    return row(f"pupils-matrix-{index}", title, source, inputs, expected, tolerance, reason)


def cone(index, what, behind, ahead, circle):
    """Front lens of 60 mm, stop *behind* it, back lens of 50 mm: where the stop stands decides where the chain looks from."""
    front, back, apart = ThinLens(60), ThinLens(50), 100
    chain = SimpleNamespace(glass=[front, apart, back], to_stop=[front, behind], from_stop=[apart - behind, back], hole=Rational(6))
    sensor, circle = image_side(chain.glass, ahead), Rational(circle)
    to_stop = through(ahead, *chain.to_stop)
    inverse = to_stop.A / to_stop.B
    roots = [root for sign in (1, -1) for root in solve(blur(chain, x, sensor) - sign * circle, x)]
    near = ahead - only_between(roots, 0, ahead)
    far = only_between(roots, ahead, ahead - 1 / inverse if inverse < 0 else oo) - ahead
    inputs = {
        "circleOfConfusion": printed(circle, "mm"),
        "effectiveFNumber": printed(effective_f_number(chain.to_stop, chain.from_stop, chain.hole, ahead, sensor)),
        "magnification": printed(Abs(magnification(chain.glass, ahead, sensor))),
        "inverseEntrancePupilDistance": printed(inverse),
    }
    expected = {"nearLimit": printed(near, "mm"), "farLimit": printed(far, "mm"), "depthOfField": printed(near + far, "mm")}
    return row(f"cone-matrix-{index}", f"limits through a chain whose pupil {what}", source, inputs, expected, {"relative": 1e-11}, because)


def only_between(roots, least, most):
    """The one root between two numbers."""
    (root,) = [root for root in roots if least < root < most]
    return root


def subject_side_at(lens, sensor):
    """How far ahead of the front glass the sharp plane stands with the sensor *x* farther back."""
    whole = through(*lens.glass, sensor + x)
    return -whole.B / whole.A


def hyperfocal(index, name, circle):
    """The lens focused so that a point infinitely far away just fills the circle."""
    lens, circle = lenses[name], Rational(circle)
    height = (lens.hole / 2) / through(*lens.to_stop).A
    (sensor,) = [root for root in solve(-2 * height * through(*lens.glass, x).A - circle, x) if root > lens.back_focus]
    u = subject_side(lens.glass, sensor) + lens.entrance_depth
    inputs = {
        "focalLength": printed(lens.focal_length, "mm"),
        "fNumber": printed(lens.f_number),
        "pupilMagnification": printed(lens.pupil_magnification),
        "circleOfConfusion": printed(circle, "mm"),
    }
    expected = {"hyperfocal": printed(u, "mm")}
    return row(f"hyperfocal-matrix-{index}", f"a {name} lens focused so that infinity just looks sharp", source, inputs, expected, {"relative": 1e-11}, because)


def nearest(index, name):
    """The least distance from sensor to subject, where its derivative is zero."""
    lens = lenses[name]
    whole = through(x, *lens.glass)
    total = x + lens.apart - whole.B / whole.D
    least = min(total.subs(x, root) for root in solve(diff(total, x), x) if total.subs(x, root) > 0 and root > -lens.front_principal_depth + lens.focal_length)
    inputs = {"focalLength": printed(lens.focal_length, "mm"), "principalSeparation": printed(lens.principal_separation, "mm")}
    return row(f"nearest-matrix-{index}", f"the least distance from sensor to subject of a {name} lens", source, inputs, {"nearestFocusDistance": printed(least, "mm")}, {"relative": 1e-12}, because)


setups = [
    ("nearly symmetric", 160, "0.03", 200, "0.5"),
    ("nearly symmetric", 900, "0.02", 3000, "2"),
    ("retrofocus", 30, "0.02", 400, "0.2"),
    ("telephoto", 420, "0.03", 1000, "1"),
    ("short", 40, "0.015", 100, "0.1"),
]
rows = [case(index, *setup) for index, setup in enumerate(setups, 1)]
rows += [hyperfocal(index, name, "0.03") for index, name in enumerate(lenses, 1)]
rows += [nearest(index, name) for index, name in enumerate(lenses, 1)]
cones = [
    ("stands in front of the subject", 40, 80, "0.02"),
    ("lies infinitely far away", 60, 80, "0.02"),
    ("lies behind the subject", 75, 80, "0.03"),
    ("lies just behind the subject", 90, 150, "0.05"),
]
rows += [cone(index, *setup) for index, setup in enumerate(cones, 1)]
write(__file__, rows)
