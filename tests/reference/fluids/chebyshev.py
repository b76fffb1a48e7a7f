"""Chebyshev expansions: fit, cut to a tolerance, round to what the tolerance allows."""

import math

import numpy as np
from numpy.polynomial import chebyshev as C


def nodes(count):
    """Chebyshev points of the first kind, rising."""
    return np.cos((2 * np.arange(count, 0, -1) - 1) * math.pi / (2 * count))


def rounded(coefficients, tolerance):
    """Multiples of a power of two, together worth an eighth of the tolerance at most.

    The low bytes of the coefficients become zero, which costs nothing and packs well.
    """
    count = np.size(coefficients)
    quantum = 2.0 ** math.floor(math.log2(tolerance / (4 * count)))
    result = np.round(np.asarray(coefficients) / quantum) * quantum
    return result.astype(np.float32).astype(float)


def fit(samples, tolerance, extra=1, weight=None):
    """Shortest expansion through samples at `nodes(len(samples))` within the tolerance.

    `tolerance` is absolute, on the value times `weight` (one for each node). `extra` degrees are
    added to the smallest that passes at the nodes.
    """
    at = nodes(len(samples))
    full = C.chebfit(at, samples, len(samples) - 1)
    weight = np.ones_like(at) if weight is None else weight
    for degree in range(2, len(samples) - 8):
        if np.max(np.abs(C.chebval(at, full[: degree + 1]) - samples) * weight) <= 0.5 * tolerance:
            kept = full[: degree + 1 + extra]
            return rounded(kept, tolerance / np.max(weight))
    raise RuntimeError(f"no expansion within {tolerance}")


def fit_surface(samples, tolerance, weight=None, extra=0):
    """Rows of coefficients, one row a degree in y, for samples[x node][y node].

    A coefficient is dropped when all of its row's rest is; the set grows with a threshold until the
    surface holds at the nodes.
    """
    nx, ny = samples.shape
    x, y = nodes(nx), nodes(ny)
    vx, vy = C.chebvander(x, nx - 1), C.chebvander(y, ny - 1)
    full = np.linalg.solve(vx, samples) @ np.linalg.inv(vy).T
    weight = np.ones_like(samples) if weight is None else weight
    limit = tolerance / np.max(weight)
    threshold = limit
    while True:
        kept = np.where(np.abs(full) >= threshold, full, 0.0)
        rows = []
        for j in range(ny):
            used = np.nonzero(kept[:, j])[0]
            rows.append(full[: used[-1] + 1 + extra, j] if len(used) else np.zeros(0))
        while rows and len(rows[-1]) == 0:
            rows.pop()
        count = sum(len(row) for row in rows)
        rows = [rounded(row, limit * len(row) / count) if len(row) else row for row in rows]
        surface = evaluate_surface(rows, x[:, None], y[None, :])
        if np.max(np.abs(surface - samples) * weight) <= 0.7 * tolerance:
            return rows
        threshold *= 0.8
        if threshold < limit * 1e-4:
            raise RuntimeError(f"no surface within {tolerance}")


def evaluate_surface(rows, x, y):
    total = 0.0
    for j, row in enumerate(rows):
        if len(row):
            total = total + C.chebval(x, row) * np.cos(j * np.arccos(np.clip(y, -1, 1)))
    return total
