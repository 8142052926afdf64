import { describe, expect, it } from 'vitest';
import { moved, movedAround, oneMore } from './times';

const hours = (...of: number[]) => of.map((hour) => hour * 60);

describe('a time of the day', () => {
    it('moves by a quarter of an hour', () => {
        expect(moved([540, 840], 0, 1)).toEqual([555, 840]);
        expect(moved([540, 840], 1, -1)).toEqual([540, 825]);
    });

    it('never passes or meets another, nor leaves the day', () => {
        expect(moved([540, 555], 0, 1)).toEqual([540, 555]);
        expect(moved([540, 550], 1, -1)).toEqual([540, 550]);
        expect(moved([0], 0, -1)).toEqual([0]);
        expect(moved([1430], 0, 1)).toEqual([1430]);
    });

    it('is added where there is most room in the waking hours', () => {
        const awake = { from: 7 * 60, to: 21 * 60 };
        expect(oneMore([], awake)).toEqual(hours(14));
        expect(oneMore(hours(9, 13), awake)).toEqual(hours(9, 13, 17));
        expect(oneMore(hours(3, 14), awake)).toEqual([180, 630, 840]);
    });

    it('is not added where there is no room', () => {
        const all = Array.from({ length: 24 }, (_, hour) => hour * 60);
        expect(oneMore(all, { from: 0, to: 1440 })).toEqual(all);
        expect(oneMore([615], { from: 600, to: 630 })).toEqual([615]);
    });

    it('of quiet goes over midnight, and never to the other end', () => {
        expect(movedAround(23 * 60 + 30, 30, 420)).toBe(0);
        expect(movedAround(0, -30, 420)).toBe(1410);
        expect(movedAround(390, 30, 420)).toBe(450);
    });
});
