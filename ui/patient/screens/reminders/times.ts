/** Times of the day, in minutes after midnight and in order, as one is moved, added or taken away. */

/** How far one press moves a time. */
const STEP = 15;
const DAY = 24 * 60;
/** As many as the host keeps. */
const MOST = 24;

/** One of them earlier or later. It stays where the next time or midnight is in the way: two never become one. */
export function moved(times: readonly number[], index: number, way: -1 | 1): number[] {
    const wanted = (times[index] ?? 0) + way * STEP;
    const before = times[index - 1] ?? -1;
    const after = times[index + 1] ?? DAY;
    return wanted > before && wanted < after ? times.with(index, wanted) : [...times];
}

/** One more, in the middle of the widest gap between getting up and going to bed; the same if there is no room. */
export function oneMore(times: readonly number[], awake: { from: number; to: number }): number[] {
    const within = times.filter((time) => time > awake.from && time < awake.to);
    const ends = [awake.from, ...within, awake.to];
    const gaps = ends.slice(1).map((end, index) => ({ from: ends[index] ?? end, to: end }));
    const widest = gaps.reduce((one, other) => (other.to - other.from > one.to - one.from ? other : one));
    const time = Math.round((widest.from + widest.to) / 2 / STEP) * STEP;
    if (times.length >= MOST || times.includes(time) || time >= DAY) return [...times];
    return [...times, time].sort((one, other) => one - other);
}

/** A minute of the day moved over midnight, past the one that it must differ from. */
export function movedAround(minute: number, by: number, other: number): number {
    const wanted = (minute + by + DAY) % DAY;
    return wanted === other ? (wanted + by + DAY) % DAY : wanted;
}
