"""Expected values of cases.json: a lens from ruler photographs by matrices, each photograph judged by fits without it.

Run: python3 expected.py   (Python 3, numpy and scipy as named in the rows), then format the file.
"""
import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "support" / "python"))

import numpy as np
import scipy
from scipy import stats

from rows import printed, row, write

lstsq = f"numpy {np.__version__}, linalg.lstsq and inv, every photograph left out in turn and the rest fitted anew, run here"
tails = f"scipy {scipy.__version__}, stats.t.sf, run here"


def solve(matrix, y, weight):
    root = np.sqrt(weight)
    beta, *_ = np.linalg.lstsq(matrix * root[:, None], y * root, rcond=None)
    left = y - matrix @ beta
    freedom = len(y) - matrix.shape[1]
    scatter = np.sqrt((weight * left**2).sum() / freedom) if freedom > 0 else np.nan
    return beta, left, scatter, np.linalg.inv(matrix.T @ (matrix * weight[:, None]))


def lens(index, title, settings, e, m, w):
    names = sorted(set(settings), key=settings.index)
    matrix = np.array([[float(s == n) for n in names] + [x] for s, x in zip(settings, e)])
    m, w = np.array(m), np.array(w)
    weight = 1 / m**2
    beta, left, scatter, inverse = solve(matrix, m, weight)
    f = 1 / beta[-1]
    studentised, without = [], []
    for at in range(len(m)):
        keep = np.arange(len(m)) != at
        other, _, spread, around = solve(matrix[keep], m[keep], weight[keep])
        # What the others predict for it, over the error of that prediction and of itself.
        error = spread * np.sqrt(1 / weight[at] + matrix[at] @ around @ matrix[at])
        studentised.append((m[at] - matrix[at] @ other) / error)
        without.append(1 / other[-1])
    fitted = matrix @ beta
    h = (f * (1 + 1 / fitted) - w).mean()
    # The mean of h by each coefficient, by small changes of it.
    def depth(b):
        return ((1 + 1 / (matrix @ b)) / b[-1] - w).mean()
    gradient = np.array([(depth(beta + d) - depth(beta - d)) / (2 * d.sum()) for d in np.diag(1e-6 * np.abs(beta) + 1e-9)])
    readings = np.var(f * (1 + 1 / fitted) - w, ddof=1) / len(w)
    herror = np.sqrt(scatter**2 * gradient @ inverse @ gradient + readings)
    inputs = {"settings": list(settings), "extension": list(e), "magnification": list(m), "workingDistance": list(w)}
    expected = {
        "focalLength": printed(f),
        "focalLengthError": printed(scatter * np.sqrt(inverse[-1, -1]) * f**2),
        "focusMagnification": [printed(one) for one in beta[:-1]],
        "focusMagnificationError": [printed(scatter * np.sqrt(inverse[at, at])) for at in range(len(names))],
        "frontPrincipalDepth": printed(h),
        "frontPrincipalDepthError": printed(herror),
        "studentised": [printed(one) for one in studentised],
        "focalLengthWithout": [printed(one) for one in without],
    }
    return row(f"rings-{index}", title, lstsq, inputs, expected, {"relative": 1e-7}, "the same sums in another order; a derivative by differences")


def distances(index, title, m, w):
    matrix = np.array([[1.0, 1 / one] for one in m])
    w = np.array(w)
    beta, _, scatter, inverse = solve(matrix, w, np.ones(len(w)))
    along = np.array([-1.0, 1.0])
    expected = {
        "focalLength": printed(beta[1]),
        "focalLengthError": printed(scatter * np.sqrt(inverse[1, 1])),
        "frontPrincipalDepth": printed(beta[1] - beta[0]),
        "frontPrincipalDepthError": printed(scatter * np.sqrt(along @ inverse @ along)),
    }
    inputs = {"magnification": list(m), "workingDistance": list(w)}
    return row(f"distances-{index}", title, lstsq, inputs, expected, {"relative": 1e-9}, "the same sums in another order")


def tail(index, t, freedom):
    expected = {"chance": printed(2 * stats.t.sf(abs(t), freedom))}
    title = f"Student's t of {t} with {freedom} degrees of freedom, both tails"
    return row(f"tails-{index}", title, tails, {"t": t, "degreesOfFreedom": freedom}, expected, 1e-13, "a finite sum; what is left of 1")


one = lens(1, "six photographs at one setting, one of them off by 3 %", [""] * 6, [0, 8, 12, 20, 24, 36], [0.1502, 0.3105, 0.3893, 0.5672, 0.6297, 0.8709], [362.3, 189.4, 155.9, 119.2, 107.1, 85.7])
two = lens(2, "seven photographs at three settings", ["near", "near", "near", "far", "far", "middle", "middle"], [0, 12, 24, 12, 36, 0, 24], [0.151, 0.3895, 0.6312, 0.2403, 0.7188, 0.0801, 0.5605], [360.0, 156.8, 107.0, 236.2, 97.6, 653.0, 117.3])
write(
    __file__,
    [one, two]
    + [distances(1, "five photographs by their working distances alone", [0.05, 0.08, 0.1, 0.13, 0.15], [1028.1, 652.6, 528.3, 412.4, 361.5])]
    + [tail(at, t, freedom) for at, (t, freedom) in enumerate([(0.5, 1), (2.0, 2), (3.5, 3), (-2.2, 8), (4.5, 15), (1.1, 60)], 1)],
)
