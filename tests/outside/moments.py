"""Static moments of 500 random poses, computed again by virtual work.

Outside: numpy, and the principle itself. The moment that muscles must give in an angle is the slope of
gravity's potential in that angle; the slope is taken exactly, by a complex step. Segment lengths, masses
and mass centres are read anew from the published table (Winter, Biomechanics and Motor Control of Human
Movement, Table 4.1, after Dempster; lengths Fig. 4.1, after Drillis and Contini 1966), joint angles follow
the International Society of Biomechanics (Wu 2002, Wu 2005): about the mediolateral axis, then the floating
axis, then the long axis. Only these conventions are shared.
"""

import json
import subprocess

import numpy as np

from kit.programs import BIN_DIR
from kit.tally import Tally

G = 9.81
STEP = 1e-30
TOLERANCE = 1e-9

# Length, share of body mass, centre from the proximal end: Winter, Table 4.1. Shank and foot move as one,
# their centre is measured along the shank. The hand's centre is at its middle.
THIGH = (0.245, 0.100, 0.433)
SHANK_AND_FOOT = (0.246, 0.061, 0.606)
FOOT = (0.152, 0.0145, 0.500)
UPPER_ARM = (0.186, 0.028, 0.436)
FOREARM = (0.146, 0.016, 0.430)
HAND = (0.108, 0.006, 0.500)

LEG, ARM = ["flexion", "abduction", "internal", "knee", "ankle"], ["flexion", "abduction", "internal", "elbow"]


def about(axis: str, degrees: complex) -> np.ndarray:
    """The rotation about a coordinate axis, by the right-hand rule."""
    radians = degrees * np.pi / 180
    c, s = np.cos(radians), np.sin(radians)
    return {
        "x": np.array([[1, 0, 0], [0, c, -s], [0, s, c]]),
        "y": np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]]),
        "z": np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]]),
    }[axis]


LYING = {
    "upright": np.eye(3),
    "on-the-back": about("z", 90),
    "face-down": about("z", -90),
    "on-left": about("x", -90),
    "on-right": about("x", 90),
}


def pelvis(pose: dict) -> np.ndarray:
    lean, turn, tilt = pose["pelvis"]
    return LYING[pose["lying"]] @ about("z", -lean) @ about("x", tilt) @ about("y", -turn)


def chest(pose: dict) -> np.ndarray:
    flexion, side, twist = pose["trunk"]
    half = about("z", -flexion / 2) @ about("x", side / 2) @ about("y", -twist / 2)
    return pelvis(pose) @ half @ half


def ball(root: np.ndarray, out: int, flexion: complex, abduction: complex, internal: complex) -> np.ndarray:
    """Thigh or upper arm. Away from the midline is the other way round on the left."""
    return root @ about("z", flexion) @ about("x", -out * abduction) @ about("y", out * internal)


def height(pose: dict, joint: str, step: dict[str, complex]) -> complex:
    """Gravity's potential over g of what a joint carries, per kg of body mass; 0 is at hip or shoulder."""
    out = 1 if pose["side"] == "right" else -1
    stature, load = pose["stature_m"], pose["load_share"]
    thigh_rests, shank_rests, upper_rests, forearm_rests = pose["rests"]
    down, ahead = np.array([0, -1, 0]), np.array([1, 0, 0])
    total: complex = 0

    def add(start: np.ndarray, direction: np.ndarray, segment: tuple[float, float, float]) -> None:
        nonlocal total
        length, mass, centre = segment
        total += mass * (start + direction * (length * centre * stature))[1]

    if joint in ("hip", "knee", "ankle"):
        f, a, i, k, d = (angle + step.get(name, 0) for name, angle in zip(LEG, pose["leg"], strict=True))
        thigh = ball(pelvis(pose), out, f, a, i)
        shank = thigh @ about("z", -k)
        foot = shank @ about("z", d)
        hip = np.zeros(3)
        knee = hip + thigh @ down * (THIGH[0] * stature)
        ankle = knee + shank @ down * (SHANK_AND_FOOT[0] * stature)
        if joint == "ankle":
            if not shank_rests:
                add(ankle, foot @ ahead, FOOT)
            return total
        if joint == "hip":
            if thigh_rests:
                return total
            add(hip, thigh @ down, THIGH)
        if not shank_rests:
            add(knee, shank @ down, SHANK_AND_FOOT)
            total += load * ankle[1]
        return total

    f, a, i, e = (angle + step.get(name, 0) for name, angle in zip(ARM, pose["arm"], strict=True))
    upper = ball(chest(pose), out, f, a, i)
    fore = upper @ about("z", e)
    shoulder = np.zeros(3)
    elbow = shoulder + upper @ down * (UPPER_ARM[0] * stature)
    wrist = elbow + fore @ down * (FOREARM[0] * stature)
    if joint == "shoulder":
        if upper_rests:
            return total
        add(shoulder, upper @ down, UPPER_ARM)
    if not forearm_rests:
        add(elbow, fore @ down, FOREARM)
        add(wrist, fore @ down, HAND)
        total += load * wrist[1]
    return total


ANGLES = [
    ("hip", "flexion"),
    ("hip", "abduction"),
    ("hip", "internal"),
    ("knee", "knee"),
    ("ankle", "ankle"),
    ("shoulder", "flexion"),
    ("shoulder", "abduction"),
    ("shoulder", "internal"),
    ("elbow", "elbow"),
]


def moment(pose: dict, joint: str, angle: str) -> float:
    """N·m/kg: the slope of the potential in the angle, per radian."""
    degrees = STEP * 180 / np.pi
    return G * height(pose, joint, {angle: 1j * degrees}).imag / STEP


def main() -> None:
    tally = Tally()
    poses = json.loads(subprocess.run([BIN_DIR / "poses"], capture_output=True, check=True, text=True).stdout)
    tally.same("poses", len(poses), 500)
    worst = 0.0
    for n, pose in enumerate(poses):
        ours = pose["moments"]
        theirs = [moment(pose, joint, angle) for joint, angle in ANGLES]
        off = max(abs(a - b) for a, b in zip(ours, theirs, strict=True))
        worst = max(worst, off)
        tally.check(f"pose {n}", off < TOLERANCE, off)
    print(f"  {len(poses)} poses, {len(ANGLES)} moments each; the greatest difference is {worst:.1e} N·m/kg")
    tally.finish()


if __name__ == "__main__":
    main()
