"""Expected values of cases.json: photons, their noise, and shares of two exposures, by scipy and numpy.

Run: python3 expected.py   (Python 3, numpy 2.4.6, scipy 1.17.1), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import numpy
import scipy
from scipy import constants, special, stats

from rows import printed, row, write

tight = {"relative": 1e-12}
four_figures = {"relative": 2e-5}
codata = f"scipy {scipy.__version__}, constants (CODATA), run here; ISO 12232: 10/S lx s for the mid-tone, 78/S at saturation (from memory)"

# One lux second of light at 540 THz, in photons on a square metre.
efficacy = constants.physical_constants["luminous efficacy"][0]
photons = 1 / efficacy / (constants.h * 540e12)


def tone(index, efficiency, pitch, iso, well):
    area = (pitch * 1e-6) ** 2
    inputs = {"quantumEfficiency": efficiency, "pixelPitch": f"{pitch} µm", "iso": iso, "fullWell": well}
    expected = {
        "electrons": printed(photons * area * efficiency * 10 / iso),
        "isoAtFullWell": printed(photons * area * efficiency * 78 / well),
    }
    title = f"electrons of a mid-tone in {pitch} µm at ISO {iso}, and the ISO at which {well} electrons fill it"
    return row(f"tone-scipy-{index}", title, codata, inputs, expected, four_figures, "ours takes the constant to four figures")


def noise(electrons, reading):
    """Photons that arrive independently, and a normal error of reading, independent of them: variances add."""
    variance = stats.poisson(electrons).var() + stats.norm(0, reading).var() if reading else stats.poisson(electrons).var()
    return stats.poisson(electrons).mean() / numpy.sqrt(variance)


counts, readings = [25, 100, 1000, 10000, 52000], [5, 0, 10, 100, 3]
signal = row(
    "noise-scipy",
    "signal to noise of photons counted with an error of reading",
    f"scipy {scipy.__version__}, stats.poisson and stats.norm, run here",
    {"counts": counts, "readNoise": readings},
    {"signalToNoise": [printed(noise(*pair)) for pair in zip(counts, readings)]},
    tight,
    "the same mean and variance; the arithmetic rounds",
)
stops = [-3, -1, 0, 0.5, 1, 2, 3, 5, 8]
share = row(
    "ambient-scipy",
    "share of the light already there, from three stops more than the flash to eight less",
    f"numpy {numpy.__version__}, logaddexp2, and scipy {scipy.__version__}, special.expit, run here",
    {"stops": stops},
    {
        "ambientShare": [printed(special.expit(-stop * numpy.log(2))) for stop in stops],
        "overexposure": [printed(numpy.logaddexp2(0, -stop)) for stop in stops],
    },
    tight,
    "the same function by another route; the arithmetic rounds",
    "Both exposures together are so many stops above the flash's: what the share makes of it must agree.",
)
write(__file__, [tone(1, 0.5, 6, 100, 50000), tone(2, 0.62, 3.76, 400, 51000), tone(3, 0.8, 2.4, 50, 12000), signal, share])
