"""Writes profit-outlooks.fixture.json with SciPy: profit of an acre when yield and price are uncertain together.

Yield and price are scipy.stats triang or beta; joined by a Gaussian copula. The chances are adaptive quadrature over
the normal score of the yield (scipy.integrate.quad), the percentiles scipy.optimize.brentq on them; the moments, the
tail mean and the certain value come from the joint density itself, a 1,500 x 1,500 grid of equally likely scores.
A correlation of 1 or -1 is a single sum over 4,000,000 equally likely scores.

    python3 make-profit-outlooks.py > profit-outlooks.fixture.json
"""

import json

import numpy as np
from scipy import integrate, optimize, special, stats

YIELDS = [(120, 190, 230), (40, 40, 65), (150, 180, 180), (0, 50, 80), (100, 180, 240)]
PRICES = [(3.2, 4.5, 6.0), (9.0, 11.0, 15.0), (4.0, 4.0, 5.5), (0.1, 6.0, 9.0), (4.3, 4.4, 4.5)]
COSTS = [(700, 0, 0.2), (420, 15, 0), (760, 0, 0.35), (300, 0, 0.5), (700, 60, 0)]
CORRELATIONS = [-1, -0.9, -0.4, 0, 0.6, 1]


def spread(shape, points):
    low, likely, high = points
    if shape == "triangular":
        return stats.triang((likely - low) / (high - low), loc=low, scale=high - low)
    a = 1 + 4 * (likely - low) / (high - low)
    b = 1 + 4 * (high - likely) / (high - low)
    return stats.beta(a, b, loc=low, scale=high - low)


def quantiles(dist, shares):
    """dist.ppf, by a fine table where a beta would take minutes."""
    if dist.dist.name == "triang":
        return dist.ppf(shares)
    grid = special.ndtr(np.linspace(-8.3, 8.3, 60_001))
    return np.interp(shares, grid, dist.ppf(grid))


def scores(count):
    return special.ndtri((np.arange(count) + 0.5) / count)


def outcomes(y_dist, p_dist, correlation, cost, other, per_bushel):
    if abs(correlation) == 1:
        z = scores(4_000_000)
        y, p = quantiles(y_dist, special.ndtr(z)), quantiles(p_dist, special.ndtr(correlation * z))
    else:
        z, e = scores(1500)[:, None], scores(1500)[None, :]
        y = quantiles(y_dist, special.ndtr(z))
        p = quantiles(p_dist, special.ndtr(correlation * z + np.sqrt(1 - correlation**2) * e))
    return np.sort((y * (p - per_bushel) + other - cost).ravel())


def chance(x, y_dist, p_dist, correlation, cost, other, per_bushel):
    dollars = x + cost - other
    spread_left = np.sqrt(1 - correlation**2)

    def at(z):
        y = y_dist.ppf(special.ndtr(z))
        p = per_bushel + dollars / y if y > 0 else np.inf * (1 if dollars >= 0 else -1)
        return special.ndtr((special.ndtri(p_dist.cdf(p)) - correlation * z) / spread_left) * np.exp(-z * z / 2)

    edges = [-8, -3, -1.5, -0.5, 0.5, 1.5, 3, 8]
    turns = [dollars / (q - per_bushel) for q in (*p_dist.support(), p_dist.ppf(0.5)) if q != per_bushel]
    edges += [float(special.ndtri(y_dist.cdf(t))) for t in turns if 1e-9 < y_dist.cdf(t) < 1 - 1e-9]
    edges = sorted(edges)
    parts = [integrate.quad(at, a, b, limit=200, epsabs=1e-10)[0] for a, b in zip(edges, edges[1:])]
    return sum(parts) / np.sqrt(2 * np.pi)


def case(shape, yields, prices, costs, correlation):
    y_dist, p_dist = spread(shape, yields), spread(shape, prices)
    x = outcomes(y_dist, p_dist, correlation, *costs)
    if abs(correlation) == 1:
        loss = float(np.searchsorted(x, 0, side="right") / len(x))
        percentiles = [float(np.quantile(x, share)) for share in (0.05, 0.1, 0.5, 0.9)]
    else:
        f = lambda value: chance(value, y_dist, p_dist, correlation, *costs)
        loss = f(0)
        percentiles = [optimize.brentq(lambda v: f(v) - share, x[0] - 1, x[-1] + 1, xtol=1e-4) for share in (0.05, 0.1, 0.5, 0.9)]
    tail = x[: len(x) // 20]
    return {
        "shape": shape,
        "yields": yields,
        "prices": prices,
        "costs": costs,
        "correlation": correlation,
        "loss": round(loss, 7),
        "percentiles": [round(value, 4) for value in percentiles],
        "mean": round(float(x.mean()), 3),
        "sd": round(float(x.std()), 3),
        "tailMean": round(float(tail.mean()), 2),
        "certain": round(float(-np.log(np.mean(np.exp(-0.005 * (x - x[0])))) / 0.005 + x[0]), 3),
        "shortfall": round(float(np.maximum(0, -x).mean()), 3),
    }


rows = [
    json.dumps(case(shape, *place, correlation))
    for shape in ("triangular", "pert")
    for place in zip(YIELDS, PRICES, COSTS)
    for correlation in CORRELATIONS
]
print("[\n  " + ",\n  ".join(rows) + "\n]")
