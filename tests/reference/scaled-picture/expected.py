"""Expected values of cases.json: a picture brought to another scale, and a level of a pyramid, by scipy's image filters.

Run: python3 expected.py   (Python 3, numpy 2.4.6, scipy 1.17.1)
"""
import json
import numpy as np
from scipy import ndimage

weights = np.array([1, 4, 6, 4, 1]) / 16


def scene(columns, rows):
    """The picture of ours.ts: noise, which is the hardest to come between."""
    k = np.arange(columns * rows).reshape(rows, columns)
    return ((k * k * 7 + k * 37) % 101) / 101


def scaled(picture, scale):
    """Cubic splines through the samples, mirrored at the last ones, about the middle."""
    middle = (np.array(picture.shape) - 1) / 2
    return ndimage.affine_transform(picture, np.full(2, scale), middle - scale * middle, order=3, mode='mirror')


def halved(picture):
    smooth = ndimage.correlate1d(ndimage.correlate1d(picture, weights, 0, mode='mirror'), weights, 1, mode='mirror')
    return smooth[::2, ::2]


def show(name, picture, places):
    print(name, json.dumps([round(float(picture[row, column]), 7) for column, row in places]))


show('scaled 0.97', scaled(scene(33, 22), 0.97), [(0, 0), (16, 11), (31, 3), (7, 20), (32, 21)])
show('scaled 1.04', scaled(scene(24, 35), 1.04), [(0, 0), (12, 17), (1, 30), (22, 34), (23, 8)])
show('halved 33x22', halved(scene(33, 22)), [(0, 0), (8, 5), (16, 0), (16, 10), (3, 7)])
show('halved 24x35', halved(scene(24, 35)), [(0, 0), (11, 17), (5, 9), (11, 0), (1, 16)])
