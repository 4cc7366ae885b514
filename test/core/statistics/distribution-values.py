"""Writes distribution-values.json: check values for test/core/statistics, made by SciPy."""
import json, itertools, scipy
from math import isfinite
from scipy import stats as s
rows=[]

def add(fn,args,value):
    # SciPy gives no number for a few far tails.
    if isfinite(value): rows.append([fn,args,float(value)])

for z in [-35,-20,-8,-5.5,-3,-1.2,-.5,-1e-9,0,.3,.67,.68,1.96,4,5.7,8]: add("normalCdf",[z],s.norm.cdf(z))
for p in [1e-250,1e-20,1e-6,.001,.025,.05,.1,.2,.42,.5,.6,.9,.95,.975,.999,1-1e-9]: add("normalQuantile",[p],s.norm.ppf(p))
for df in [1,2,3,4.5,9,30,200,5000]:
    for t in [-40,-6,-2.5,-.8,0,.3,1.7,3,12]: add("studentTCdf",[t,df],s.t.cdf(t,df))
    for p in [1e-6,.005,.05,.3,.6,.9,.95,.975,.9999]: add("studentTQuantile",[p,df],s.t.ppf(p,df))
for d1,d2 in itertools.product([1,2,3,7,40],[1,2,6,25,300]):
    for x in [.01,.5,1,2.5,10,200]: add("fCdf",[x,d1,d2],s.f.cdf(x,d1,d2))
    for x in [1.,5,60]: add("fUpperTail",[x,d1,d2],s.f.sf(x,d1,d2))
    for p in [.05,.5,.9,.95,.99]: add("fQuantile",[p,d1,d2],s.f.ppf(p,d1,d2))
for df in [1,2,5,17.5,120]:
    for x in [.01,.7,3,11.07,60,140]: add("chiSquaredCdf",[x,df],s.chi2.cdf(x,df))
for a,b in [(.5,.5),(1,3),(2,3),(8,2.5),(60,90),(400,.5)]:
    for x in [.001,.1,.37,.5,.8,.99]: add("betaCdf",[x,a,b],s.beta.cdf(x,a,b))
    for p in [.01,.1,.5,.9,.99]: add("betaQuantile",[p,a,b],s.beta.ppf(p,a,b))
for df in [1,2,3,5,11,40,300]:
    for d in [-2,0,.5,1.5,3,6,15]:
        for t in [-3,-.5,.2,1.8,2.9,6,20]: add("noncentralTCdf",[t,df,d],s.nct.cdf(t,df,d))
for d1,d2 in itertools.product([1,2,3,6],[2,3,6,15,60]):
    for l in [.1,1,3.125,12,60]:
        for x in [.2,1,3,5,9]: add("noncentralFCdf",[x,d1,d2,l],s.ncf.cdf(x,d1,d2,l))
for k,df in itertools.product([2,3,4,6,10,20],[1,2,3,6,10,16,40,120]):
    for q in [.5,1.5,3,3.7,4.5,6,12]: add("studentizedRangeCdf",[q,k,df],s.studentized_range.cdf(q,k,df))
for k,df in itertools.product([2,3,4,6,10],[2,3,6,10,16,40,120]):
    for p in [.9,.95,.99]: add("studentizedRangeQuantile",[p,k,df],s.studentized_range.ppf(p,k,df))
with open("distribution-values.json","w") as f:
    f.write('{"madeBy":%s,"script":"distribution-values.py","rows":[\n'%json.dumps("SciPy "+scipy.__version__))
    f.write(",\n".join(json.dumps(r) for r in rows)); f.write("\n]}\n")
