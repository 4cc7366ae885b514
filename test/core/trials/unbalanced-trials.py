"""Writes unbalanced-trials.json: trials with lost strips, fitted with NumPy least squares on dummy variables,
chances and ranges by SciPy. Check values for the block analysis, which takes another route."""
import json, numpy as np, scipy
from scipy import stats

rng = np.random.default_rng(20)
trials = []
for t, b, lost in [(3, 4, 1), (4, 5, 3), (2, 6, 1), (6, 4, 5), (5, 3, 0)]:
    full = [(i, j) for i in range(t) for j in range(b)]
    gone = {int(k) for k in rng.choice(len(full), lost, replace=False)}
    rows = [(i, j, round(180 + 4 * i + 9 * j + float(rng.normal(0, 5)), 1)) for n, (i, j) in enumerate(full) if n not in gone]
    y = np.array([r[2] for r in rows])
    blocks = np.array([[float(r[1] == j) for j in range(b)] for r in rows])
    x = np.hstack([blocks, [[float(r[0] == i) for i in range(1, t)] for r in rows]])
    beta = np.linalg.lstsq(x, y, rcond=None)[0]
    rss = float(((y - x @ beta) ** 2).sum())
    only = np.linalg.lstsq(blocks, y, rcond=None)[0]
    rss_blocks = float(((y - blocks @ only) ** 2).sum())
    df = len(y) - b - t + 1
    mse = rss / df
    cov = np.linalg.inv(x.T @ x) * mse
    f = (rss_blocks - rss) / (t - 1) / mse
    gains = [float(v) for v in beta[b:]]
    errors = [float(cov[b + k, b + k] ** 0.5) for k in range(t - 1)]
    alone = [float(2 * stats.t.sf(abs(g) / e, df)) for g, e in zip(gains, errors)]
    base = float(beta[:b].mean())
    trials.append(dict(rows=[list(r) for r in rows], treatments=t, blocks=b, errorDf=df, meanSquare=mse, f=f,
        chance=float(stats.f.sf(f, t - 1, df)), means=[base] + [base + g for g in gains], gains=gains,
        errors=errors, alone=alone, t90=float(stats.t.ppf(0.95, df))))
with open("unbalanced-trials.json", "w") as out:
    out.write(json.dumps(dict(madeBy=f"NumPy {np.__version__}, SciPy {scipy.__version__}", script="unbalanced-trials.py", trials=trials)))
