"""Every quantity worked again from the inputs that it names, by the formula that the layout prints for it."""
import re
from fractions import Fraction
from math import ceil, isclose, log, pi

TOKEN = re.compile(r"\s*(?:(\d+(?:\.\d+)?)|([A-Za-z][A-Za-z0-9]*)|(\*\*|[-+/()^*]))")
WHOLE = {"anode-count"}     # rounded up


def tokens(text):
    at, out = 0, []
    while at < len(text.rstrip()):
        found = TOKEN.match(text, at)
        if not found:
            raise ValueError(f"{text}: what is this at {text[at:]}?")
        out.append(found.groups())
        at = found.end()
    return out


def worked(text, values):
    """'W = 7.85 A t' with what A and t are. Two figures side by side are multiplied; a division takes the next figure only."""
    program, operand = [], False
    for figure, name, sign in tokens(text.split("=", 1)[1]):
        calls = name == "ln"
        if operand and (figure or name or sign == "("):
            program.append("*")
        program.append(figure or (name if name else {"^": "**"}.get(sign, sign)))
        operand = bool(figure or (name and not calls) or sign == ")")
    return eval(" ".join(program), {"__builtins__": {}}, {"pi": pi, "ln": log, **values})  # the layout's own arithmetic


def wrong(policy, formulas, quantities):
    """(what, said, worked) of those that do not come out."""
    for q in quantities:
        text = formulas[q["formula"]]["text"].replace("{steel}", policy.given["steel-density"])
        value = worked(text, {i["symbol"]: i["value"] for i in q["inputs"]})
        value = ceil(Fraction(value).limit_denominator(10**9)) if q["formula"] in WHOLE else value
        if not isclose(value, q["value"], rel_tol=1e-9, abs_tol=1e-9):
            yield f"{q['of']}: {q['formula']}", q["value"], value
