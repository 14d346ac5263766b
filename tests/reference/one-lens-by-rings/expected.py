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


least_share = 2e-4
by_hand = 1 / np.sqrt(12)


def solve(matrix, y, weight, told=False):
    root = np.sqrt(weight)
    beta, *_ = np.linalg.lstsq(matrix * root[:, None], y * root, rcond=None)
    left = y - matrix @ beta
    freedom = len(y) - matrix.shape[1]
    scatter = np.sqrt((weight * left**2).sum() / freedom) if freedom > 0 else np.nan
    if told:
        # Birge's ratio, never below 1.
        scatter = 1.0 if np.isnan(scatter) else max(1.0, scatter)
    return beta, left, scatter, np.linalg.inv(matrix.T @ (matrix * weight[:, None]))


def lens(index, title, settings, e, m, w, share=None):
    names = sorted(set(settings), key=settings.index)
    matrix = np.array([[float(s == n) for n in names] + [x] for s, x in zip(settings, e)])
    m, w = np.array(m), np.array(w)
    told = share is not None
    sigma = m * np.hypot(share, least_share) if told else m
    weight = 1 / sigma**2
    beta, left, scatter, inverse = solve(matrix, m, weight, told)
    if told and len(names) == 1:
        # numpy's own weighted straight line is the same one, with the same covariance.
        (slope, start), covariance = np.polyfit(np.array(e, float), m, 1, w=1 / sigma, cov="unscaled")
        assert np.allclose([start, slope], beta, rtol=1e-10)
        assert np.allclose(covariance[::-1, ::-1], inverse, rtol=1e-9)
    f = 1 / beta[-1]
    studentised, without = [], []
    for at in range(len(m)):
        keep = np.arange(len(m)) != at
        other, _, spread, around = solve(matrix[keep], m[keep], weight[keep], told)
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
    if told:
        readings = max(readings, by_hand**2 / len(w))
    herror = np.sqrt(scatter**2 * gradient @ inverse @ gradient + readings)
    inputs = {"settings": list(settings), "extension": list(e), "magnification": list(m), "workingDistance": list(w)}
    if told:
        inputs["fieldShare"] = list(share)
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


def distances(index, title, m, w, share=None):
    matrix = np.array([[1.0, 1 / one] for one in m])
    w = np.array(w)
    weight = np.ones(len(w))
    beta, _, scatter, inverse = solve(matrix, w, weight)
    if share is not None:
        # An error of m is one of w, by f/m; f stands in its own weights.
        for _ in range(30):
            sigma = np.hypot(by_hand, beta[1] / np.array(m) * np.hypot(share, least_share))
            beta, _, scatter, inverse = solve(matrix, w, 1 / sigma**2, True)
    along = np.array([-1.0, 1.0])
    expected = {
        "focalLength": printed(beta[1]),
        "focalLengthError": printed(scatter * np.sqrt(inverse[1, 1])),
        "frontPrincipalDepth": printed(beta[1] - beta[0]),
        "frontPrincipalDepthError": printed(scatter * np.sqrt(along @ inverse @ along)),
    }
    inputs = {"magnification": list(m), "workingDistance": list(w)}
    if share is not None:
        inputs["fieldShare"] = list(share)
    return row(f"distances-{index}", title, lstsq, inputs, expected, {"relative": 1e-9}, "the same sums in another order")


def tail(index, t, freedom):
    expected = {"chance": printed(2 * stats.t.sf(abs(t), freedom))}
    title = f"Student's t of {t} with {freedom} degrees of freedom, both tails"
    return row(f"tails-{index}", title, tails, {"t": t, "degreesOfFreedom": freedom}, expected, 1e-13, "a finite sum; what is left of 1")


one = lens(1, "six photographs at one setting, one of them off by 3 %", [""] * 6, [0, 8, 12, 20, 24, 36], [0.1502, 0.3105, 0.3893, 0.5672, 0.6297, 0.8709], [362.3, 189.4, 155.9, 119.2, 107.1, 85.7])
two = lens(2, "seven photographs at three settings", ["near", "near", "near", "far", "far", "middle", "middle"], [0, 12, 24, 12, 36, 0, 24], [0.151, 0.3895, 0.6312, 0.2403, 0.7188, 0.0801, 0.5605], [360.0, 156.8, 107.0, 236.2, 97.6, 653.0, 117.3])
three = lens(3, "five photographs with errors of their own, which explain how they scatter; the slanted one is known to a quarter per cent", [""] * 5, [0, 12, 12, 24, 36], [0.15002, 0.39004, 0.38995, 0.6321, 0.87015], [360.9, 155.8, 156.1, 107.6, 85.4], [1e-4, 2e-4, 3e-4, 2.4e-3, 2e-4])
four = lens(4, "seven photographs at two settings, which scatter more than their errors explain", ["near"] * 4 + ["far"] * 3, [0, 12, 24, 36, 12, 24, 36], [0.1503, 0.3894, 0.6309, 0.8694, 0.2403, 0.4795, 0.7215], [361.0, 156.3, 107.2, 85.6, 236.3, 132.2, 97.6], [1e-4, 3e-4, 5e-4, 2e-4, 4e-4, 1e-3, 2e-4])
write(
    __file__,
    [one, two, three, four]
    + [distances(1, "five photographs by their working distances alone", [0.05, 0.08, 0.1, 0.13, 0.15], [1028.1, 652.6, 528.3, 412.4, 361.5])]
    + [distances(2, "five working distances, with magnifications that have errors of their own", [0.05, 0.08, 0.1, 0.13, 0.15], [1029.4, 652.6, 528.6, 412.1, 361.0], [1e-3, 2e-4, 3e-3, 5e-4, 1e-4])]
    + [tail(at, t, freedom) for at, (t, freedom) in enumerate([(0.5, 1), (2.0, 2), (3.5, 3), (-2.2, 8), (4.5, 15), (1.1, 60)], 1)],
)
