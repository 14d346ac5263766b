"""How long scipy takes, on one thread, for convolutions of two real planes each with a real transfer that is known already.

Run: python3 picture-compiled.py '[[768, 512], ...]'   (columns, rows; Python 3 with numpy and scipy). Prints milliseconds: the best of three.
"""
import json
import sys
import time

import numpy as np
from scipy import fft

sizes = json.loads(sys.argv[1])
random = np.random.default_rng(1)


def once():
    spent = 0.0
    for columns, rows in sizes:
        planes = [random.random((rows, columns), dtype=np.float32) for _ in range(2)]
        transfer = random.random((rows, columns // 2 + 1), dtype=np.float32)
        start = time.perf_counter()
        for plane in planes:
            fft.irfft2(fft.rfft2(plane, workers=1) * transfer, s=(rows, columns), workers=1)
        spent += time.perf_counter() - start
    return spent * 1000


print(min(once() for _ in range(3)))
