import { describe, expect, it } from 'vitest';
import { GIRTH, LENGTH, skeleton, type Limbs, type Point } from './figure';
import { POSITIONS, type Position } from './positions';

const EVERY = Object.keys(POSITIONS) as Position[];

const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

/** The lowest point of every limb, its thickness counted in. */
function lowest({ leg: [hip, knee, ankle, toe], arm }: Limbs): number {
    return Math.min(
        hip.y - GIRTH.thigh,
        knee.y - GIRTH.shin,
        ankle.y - GIRTH.foot,
        toe.y - GIRTH.foot,
        ...arm.map((point) => point.y - GIRTH.arm),
    );
}

describe.each(EVERY)('%s', (position) => {
    const { pose, place } = POSITIONS[position];
    const body = skeleton(pose);

    it('rests on what carries it, neither sunk in nor floating', () => {
        const low = Math.min(lowest(body.near), body.trunk[0].y - GIRTH.trunk);
        expect(low).toBeGreaterThan(place.height - 3.2);
        expect(low).toBeLessThan(place.height + 1.5);
    });

    it('stays inside the square', () => {
        const points = [...body.trunk, body.head, ...body.near.leg, ...body.near.arm, ...body.far.leg];
        for (const point of points) {
            expect(point.x).toBeGreaterThan(1);
            expect(point.x).toBeLessThan(99);
            expect(point.y).toBeLessThan(90);
        }
    });

    it('keeps the proportions of the one body', () => {
        const [hip, knee] = body.near.leg;
        const [shoulder, elbow] = body.near.arm;
        expect(distance(hip, knee)).toBeCloseTo(LENGTH.thigh * (pose.near.leg.seen ?? 1));
        expect(distance(shoulder, elbow)).toBeCloseTo(LENGTH.upper);
        expect(distance(...body.trunk)).toBeCloseTo(LENGTH.trunk);
    });
});
