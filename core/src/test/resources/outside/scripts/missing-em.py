"""Maximum likelihood of group means and one covariance from rows with holes, by solving the score.

Penguins 5, 14, 23, ... of those with all four measurements, with the holes of
penguins_mask.csv, are the shelf; penguins 1, 10, 19, ... without holes are the bones. No expectation and
maximisation is done here: the gradient of the observed-data log-likelihood (normal, one covariance)
is written out and set to zero by scipy.optimize (L-BFGS, then root of the gradient).
Covariance: maximum times n / (n - k). Shares: exp(-D2/2) with equal priors.
Run in the folder above: python3 scripts/missing-em.py > expected/d_missing_ml.csv
"""
import csv
import numpy as np
import scipy
from scipy.optimize import minimize, root

COLUMNS = ["bill_length", "bill_depth", "flipper_length", "body_mass"]
UNIT = np.array([5.0, 2.0, 14.0, 800.0])  # only for the optimiser's sake
rows = [r for r in csv.DictReader(open("data/penguins.csv")) if all(r[c] != "NA" for c in COLUMNS)]
mask = {r["id"]: [r[c] == "1" for c in COLUMNS] for r in csv.DictReader(open("data/penguins_mask.csv"))}
species = sorted({r["species"] for r in rows})
x = np.array([[float(r[c]) for c in COLUMNS] for r in rows]) / UNIT
g = np.array([species.index(r["species"]) for r in rows])
shelf = [i for i in range(4, len(rows), 9) if any(mask[rows[i]["id"]])]
p, k, n = 4, len(species), len(shelf)
tril = np.tril_indices(p)


def unpack(t):
    L = np.zeros((p, p))
    L[tril] = t[k * p:]
    return t[: k * p].reshape(k, p), L


def negative(t):
    m, L = unpack(t)
    S = L @ L.T
    value, gm, gS = 0.0, np.zeros((k, p)), np.zeros((p, p))
    for i in shelf:
        o = np.flatnonzero(mask[rows[i]["id"]])
        Si = np.linalg.inv(S[np.ix_(o, o)])
        d = x[i, o] - m[g[i], o]
        a = Si @ d
        value += 0.5 * (np.linalg.slogdet(S[np.ix_(o, o)])[1] + d @ a)
        gm[g[i], o] -= a
        gS[np.ix_(o, o)] += 0.5 * (Si - np.outer(a, a))
    gL = (gS + gS.T) @ L
    return value, np.concatenate([gm.ravel(), gL[tril]])


start = np.concatenate([np.array([x[g == j].mean(0) for j in range(k)]).ravel(), np.eye(p)[tril] * 0.5])
t = minimize(negative, start, jac=True, method="L-BFGS-B", options={"maxiter": 5000}).x
solved = root(lambda t: negative(t)[1], t, tol=1e-14)
m, L = unpack(solved.x)
W = L @ L.T * n / (n - k)
print(f"# Python 3, numpy {np.__version__}, scipy {scipy.__version__}: optimize.root on the score of the "
      f"observed-data normal log-likelihood; largest score left {np.abs(solved.fun).max():.1e}; "
      f"scripts/missing-em.py; n = {n}, k = {k}")
print("kind,id,class,column,other,value")
for j, c in enumerate(COLUMNS):
    for s in range(k):
        print(f"mean,,{species[s]},{c},,{m[s, j] * UNIT[j]!r}".replace("np.float64(", "").replace(")", ""))
    for h in range(j + 1):
        print(f"covariance,,,{c},{COLUMNS[h]},{float(W[j, h] * UNIT[j] * UNIT[h])!r}")
for i in range(0, len(rows), 9):
    d2 = np.array([(x[i] - m[s]) @ np.linalg.solve(W, x[i] - m[s]) for s in range(k)])
    share = np.exp(-0.5 * (d2 - d2.min()))
    share /= share.sum()
    for s in range(k):
        print(f"d2,{rows[i]['id']},{species[s]},,,{float(d2[s])!r}")
        print(f"share,{rows[i]['id']},{species[s]},,,{float(share[s])!r}")
