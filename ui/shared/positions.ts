import type { ArmAngles, LegAngles, Point, Pose } from './figure';

export type Position =
    | 'supine'
    | 'hook-lying'
    | 'side-lying'
    | 'prone'
    | 'seated'
    | 'standing'
    | 'bent-over'
    | 'kneeling'
    | 'hands-and-knees';

/** What the person rests on, as strokes in the figure's own space: the ground is y = 0, up is positive. */
export interface Place {
    /** Surfaces that carry the body: thick. */
    readonly carrying: readonly (readonly Point[])[];
    /** Pillows: thick and pale. */
    readonly soft: readonly (readonly Point[])[];
    /** Legs, posts and rims: thin. */
    readonly frame: readonly (readonly Point[])[];
    /** How high the body lies or stands above the ground. */
    readonly height: number;
}

export interface Placed {
    readonly pose: Pose;
    readonly place: Place;
}

const at = (x: number, y: number): Point => ({ x, y });

const both = (leg: LegAngles, arm: ArmAngles): Pick<Pose, 'near' | 'far'> => ({
    near: { leg, arm },
    far: { leg, arm },
});

const BED = 20;
const BED_PLACE: Place = {
    height: BED,
    carrying: [[at(4, BED - 2), at(96, BED - 2)]],
    soft: [[at(9, BED + 0.6), at(19, BED + 0.6)]],
    frame: [
        [at(4, BED + 12), at(4, 0)],
        [at(96, BED - 2), at(96, 0)],
        [at(4, BED - 9), at(96, BED - 9)],
    ],
};

const MAT_PLACE: Place = { height: 3, carrying: [[at(12, 1.2), at(88, 1.2)]], soft: [], frame: [] };

const supine: Placed = {
    place: BED_PLACE,
    pose: {
        hip: at(52, BED + 5.5),
        trunk: 180,
        neck: 171,
        ...both({ thigh: -1, shin: -2, foot: 82 }, { upper: -4, fore: 2 }),
    },
};

const hookLying: Placed = {
    place: BED_PLACE,
    pose: {
        hip: at(52, BED + 5.5),
        trunk: 180,
        neck: 171,
        near: { leg: { thigh: 52, shin: -74.5, foot: 0 }, arm: { upper: -4, fore: 2 } },
        far: { leg: { thigh: 52, shin: -74.5, foot: 0 }, arm: { upper: -4, fore: 2 } },
    },
};

const sideLying: Placed = {
    place: {
        ...BED_PLACE,
        soft: [
            [at(8, BED + 1.2), at(20, BED + 1.2)],
            [at(9, BED + 3), at(19, BED + 3)],
        ],
    },
    pose: {
        hip: at(52, BED + 7),
        trunk: 176,
        neck: 176,
        near: {
            leg: { thigh: 16, shin: -22, foot: -28, seen: 0.88 },
            arm: { upper: -34, fore: 14, seen: 0.8 },
        },
        far: {
            leg: { thigh: -12, shin: -3, foot: 12, seen: 0.88 },
            arm: { upper: -34, fore: 14, seen: 0.6 },
        },
    },
};

const prone: Placed = {
    place: { ...BED_PLACE, soft: [] },
    pose: {
        hip: at(50, BED + 5.5),
        trunk: 180,
        neck: 176,
        ...both({ thigh: -1, shin: 1, foot: -32 }, { upper: 202, fore: 176, seen: 0.45 }),
    },
};

const seated: Placed = {
    place: {
        height: 0,
        soft: [],
        carrying: [[at(31, 17.5), at(56, 17.5)]],
        frame: [
            [at(31, 52), at(31, 0)],
            [at(55, 17.5), at(55, 0)],
        ],
    },
    pose: {
        hip: at(41, 23.5),
        trunk: 92,
        neck: 88,
        ...both({ thigh: -3, shin: -88, foot: 0 }, { upper: -76, fore: -14 }),
    },
};

const standing: Placed = {
    place: {
        height: 0,
        soft: [],
        carrying: [[at(55, 44.5), at(94, 44.5)]],
        frame: [[at(58, 6), at(92, 6)], ...[60, 70, 80, 90].map((x) => [at(x, 44.5), at(x, 0)])],
    },
    pose: {
        hip: at(38, 42),
        trunk: 90,
        neck: 88,
        ...both({ thigh: -89, shin: -91, foot: 0 }, { upper: -74, fore: -12 }),
    },
};

const bentOver: Placed = {
    place: {
        height: 0,
        soft: [],
        carrying: [[at(50, 32), at(94, 32)]],
        frame: [
            [at(54, 32), at(54, 0)],
            [at(90, 32), at(90, 0)],
        ],
    },
    pose: {
        hip: at(30, 42),
        trunk: 18,
        neck: 12,
        ...both({ thigh: -89, shin: -91, foot: 0 }, { upper: -84, fore: -4 }),
    },
};

const kneeling: Placed = {
    place: MAT_PLACE,
    pose: {
        hip: at(50, 26),
        trunk: 90,
        neck: 88,
        ...both({ thigh: -88, shin: 180, foot: 186 }, { upper: -96, fore: -80 }),
    },
};

const handsAndKnees: Placed = {
    place: MAT_PLACE,
    pose: {
        hip: at(38, 26),
        trunk: 12,
        neck: 4,
        ...both({ thigh: -90, shin: 180, foot: 186 }, { upper: -92, fore: -86 }),
    },
};

export const POSITIONS: Readonly<Record<Position, Placed>> = {
    supine,
    'hook-lying': hookLying,
    'side-lying': sideLying,
    prone,
    seated,
    standing,
    'bent-over': bentOver,
    kneeling,
    'hands-and-knees': handsAndKnees,
};
