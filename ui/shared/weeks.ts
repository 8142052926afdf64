/** Steps a person counts in without thinking. */
const STEPS = [1, 2, 4, 5, 10, 20] as const;

/**
 * The places in a row of `count` evenly spaced marks that have room for their number.
 *
 * The place of today always has one; the others stand at round steps, and give way to it.
 */
export function numbered(
    count: number,
    today: number | undefined,
    spacing: number,
    labelWidth: number,
): number[] {
    const step = STEPS.find((candidate) => candidate * spacing >= labelWidth) ?? Math.max(1, count);
    const places = Array.from({ length: count }, (_, place) => place);
    return places.filter((place) => {
        if (place === today) return true;
        const regular = (place + 1) % step === 0;
        return regular && (today === undefined || Math.abs(place - today) * spacing >= labelWidth);
    });
}
