/**
 * One body for every drawing of a person: fixed segment lengths, and a pose as angles.
 *
 * Angles are degrees, 0 towards the figure's front on paper (right), 90 up. The ground is y = 0 and y grows
 * upwards; the far side is shifted by `FAR`, which is the whole of the projection.
 */
export interface Point {
    readonly x: number;
    readonly y: number;
}

export interface LegAngles {
    readonly thigh: number;
    readonly shin: number;
    readonly foot: number;
    /** How much of thigh and shin is seen when the knee comes towards us; the whole if unsaid. */
    readonly seen?: number;
}

export interface ArmAngles {
    readonly upper: number;
    readonly fore: number;
    /** How much of the forearm is seen when the elbow points towards us; the whole if unsaid. */
    readonly seen?: number;
}

export interface Pose {
    readonly hip: Point;
    readonly trunk: number;
    readonly neck: number;
    readonly near: { readonly leg: LegAngles; readonly arm: ArmAngles };
    readonly far: { readonly leg: LegAngles; readonly arm: ArmAngles };
}

export interface Limbs {
    readonly leg: readonly [Point, Point, Point, Point];
    readonly arm: readonly [Point, Point, Point];
}

export interface Skeleton {
    readonly trunk: readonly [Point, Point];
    readonly head: Point;
    readonly near: Limbs;
    readonly far: Limbs;
}

export const LENGTH = { trunk: 25, neck: 12.5, upper: 14, fore: 14, thigh: 20, shin: 19, foot: 7 } as const;

/** Half of each limb's thickness. */
export const GIRTH = { trunk: 5.5, head: 6, arm: 2.6, neck: 2.6, thigh: 4, shin: 3.2, foot: 2.4 } as const;

export const FAR: Point = { x: 3, y: 1.5 };

function along(from: Point, angle: number, length: number): Point {
    const radians = (angle * Math.PI) / 180;
    return { x: from.x + Math.cos(radians) * length, y: from.y + Math.sin(radians) * length };
}

function leg(hip: Point, angles: LegAngles): Limbs['leg'] {
    const knee = along(hip, angles.thigh, LENGTH.thigh * (angles.seen ?? 1));
    const ankle = along(knee, angles.shin, LENGTH.shin * (angles.seen ?? 1));
    return [hip, knee, ankle, along(ankle, angles.foot, LENGTH.foot)];
}

function arm(shoulder: Point, angles: ArmAngles): Limbs['arm'] {
    const elbow = along(shoulder, angles.upper, LENGTH.upper);
    return [shoulder, elbow, along(elbow, angles.fore, LENGTH.fore * (angles.seen ?? 1))];
}

const behind = (point: Point): Point => ({ x: point.x + FAR.x, y: point.y + FAR.y });

export function skeleton(pose: Pose): Skeleton {
    const neck = along(pose.hip, pose.trunk, LENGTH.trunk);
    const shoulder = along(pose.hip, pose.trunk, LENGTH.trunk - 2);
    return {
        trunk: [pose.hip, neck],
        head: along(neck, pose.neck, LENGTH.neck),
        near: { leg: leg(pose.hip, pose.near.leg), arm: arm(shoulder, pose.near.arm) },
        far: { leg: leg(behind(pose.hip), pose.far.leg), arm: arm(behind(shoulder), pose.far.arm) },
    };
}
