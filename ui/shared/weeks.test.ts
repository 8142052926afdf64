import { describe, expect, it } from 'vitest';
import { numbered } from './weeks';

const LABEL = 30;

describe('the numbers on the weeks line', () => {
    it('stand at every week where there is room', () => {
        expect(numbered(6, 1, 312 / 6, LABEL)).toEqual([0, 1, 2, 3, 4, 5]);
    });

    it('stand at round weeks where there is little', () => {
        expect(numbered(12, undefined, 312 / 12, LABEL).map((place) => place + 1)).toEqual([
            2, 4, 6, 8, 10, 12,
        ]);
    });

    it.each([6, 9, 12, 16, 20, 26])(
        'never touch in %i weeks, whichever week it is, and always name today',
        (count) => {
            const spacing = 312 / count;
            for (let today = 0; today < count; today += 1) {
                const places = numbered(count, today, spacing, LABEL);
                expect(places).toContain(today);
                for (const [index, place] of places.entries()) {
                    const next = places[index + 1];
                    if (next !== undefined) expect((next - place) * spacing).toBeGreaterThanOrEqual(LABEL);
                }
            }
        },
    );

    it('leave today alone when not even round weeks have room', () => {
        expect(numbered(26, 10, 2, 60)).toEqual([10]);
    });
});
