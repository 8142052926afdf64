import { describe, expect, it } from 'vitest';
import type { ShapeView } from '../generated/bridge';
import { pathAt, shareAt } from './figure';

const shape: ShapeView = {
    part: 'near',
    form: 'M~ ~L~ ~Z',
    frames: [
        [0, 0, 10, 0],
        [0, 0, 0, 10],
        [0, 0, -10, 0],
    ],
};

describe('a path', () => {
    it('is a frame at its moment, and lies between two of them else', () => {
        expect(pathAt(shape, 0)).toBe('M0.00 0.00L10.00 0.00Z');
        expect(pathAt(shape, 0.25)).toBe('M0.00 0.00L5.00 5.00Z');
        expect(pathAt(shape, 1)).toBe('M0.00 0.00L-10.00 0.00Z');
        expect(pathAt(shape, 7)).toBe(pathAt(shape, 1));
    });

    it('of a shape that does not move is the same at every moment', () => {
        const still = { ...shape, frames: [[1, 2, 3, 4]] };
        expect(pathAt(still, 0.7)).toBe(pathAt(still, 0));
    });
});

describe('the way', () => {
    const motion = (phase: 'out' | 'hold' | 'back' | 'pause', seconds = 4) => ({ phase, seconds, number: 1 });

    it('goes out and back in the time that the dose gives, and rests between', () => {
        expect(shareAt(motion('out'), 0)).toBe(0);
        expect(shareAt(motion('out'), 2)).toBe(0.5);
        expect(shareAt(motion('out'), 4)).toBe(1);
        expect(shareAt(motion('hold'), 1)).toBe(1);
        expect(shareAt(motion('back'), 4)).toBe(0);
        expect(shareAt(motion('pause'), 0)).toBe(0);
        expect(shareAt(null, 3)).toBe(0);
    });

    it('never leaves it, however late a frame is', () => {
        expect(shareAt(motion('out'), 99)).toBe(1);
        expect(shareAt(motion('back'), 99)).toBe(0);
        expect(shareAt(motion('out', 0), 0)).toBe(1);
    });
});
