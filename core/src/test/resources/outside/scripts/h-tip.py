"""A bone read at a tip that feeds no line: conditional mean under generalised least squares.

Written for this check alone, numpy only, inverse matrices (the project uses a Cholesky factor).
y0 = x0'b + c'W(y - Xb); var = s2 (v0 - c'Wc + d'(X'WX)^-1 d), d = x0 - X'Wc, W = V^-1,
s2 = r'Wr/(n - 2). Run in the folder above: python3 scripts/h-tip.py > expected/h_tip.csv
"""
import csv, re
import numpy as np
from scipy.stats import t

text = open("data/geospiza_tree.nwk").read().strip().rstrip(";")
tokens = re.findall(r"[(),]|[^(),]+", text)
paths, place, stack = {}, 0, []

def read(i):
    """One node: (tips below with the branches from here, next token)."""
    kids = []
    if tokens[i] == "(":
        i += 1
        while True:
            kid, i = read(i)
            kids.append(kid)
            if tokens[i] == ")":
                i += 1
                break
            i += 1
    label = tokens[i] if i < len(tokens) and tokens[i] not in "()," else ""
    i += 1 if label else 0
    name, _, length = label.partition(":")
    return (name, float(length or 0), kids), i

def walk(node, above, n=[0]):
    name, length, kids = node
    n[0] += 1
    here = above + [(n[0], length)]
    if not kids:
        paths[name] = dict(here)
    for kid in kids:
        walk(kid, here)

root, _ = read(0)
walk(root, [])
traits = {r["species"]: r for r in csv.DictReader(open("data/geospiza_traits.csv"))}

def shared(a, b):
    return sum(v for k, v in paths[a].items() if k in paths[b])

print("# Python 3.11, numpy 2.4.6, scipy 1.17.1; scripts/h-tip.py, its formula in its first lines")
print("set,tip,lambda,x0,n,fit,se_new,lo95,hi95")
for tip in ["parvulus", "fuliginosa", "scandens"]:
    for lam in [1.0, 0.5]:
        names = [s for s in traits if s != tip]
        V = np.array([[shared(a, b) * (1 if a == b else lam) for b in names] for a in names])
        c = np.array([lam * shared(a, tip) for a in names])
        v0 = shared(tip, tip)
        X = np.array([[1, float(traits[s]["wingL"])] for s in names])
        y = np.array([float(traits[s]["culmenL"]) for s in names])
        W = np.linalg.inv(V)
        C = np.linalg.inv(X.T @ W @ X)
        b = C @ X.T @ W @ y
        r = y - X @ b
        s2 = r @ W @ r / (len(y) - 2)
        x0 = 4.2
        d = np.array([1, x0]) - X.T @ W @ c
        fit = np.array([1, x0]) @ b + c @ W @ r
        se = np.sqrt(s2 * (v0 - c @ W @ c + d @ C @ d))
        h = t.ppf(0.975, len(y) - 2) * se
        row = [fit, se, fit - h, fit + h]
        print(f"geospiza_culmen_on_wing,{tip},{lam},{x0},{len(y)}," + ",".join(repr(float(v)) for v in row))
