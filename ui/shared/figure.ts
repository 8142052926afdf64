/** How a figure that comes from Rust is put on paper, at any moment of the way out. */
import type { MotionView, ShapeView } from '../generated/bridge';

/** A shape's path at a share of the way out, between the two frames about it. */
export function pathAt(shape: ShapeView, share: number): string {
    const last = shape.frames.length - 1;
    const at = Math.min(Math.max(share, 0), 1) * last;
    const before = shape.frames[Math.floor(at)] ?? [];
    const after = shape.frames[Math.min(Math.floor(at) + 1, last)] ?? before;
    const part = at - Math.floor(at);
    let path = '';
    shape.form.split('~').forEach((letters, n) => {
        path += letters;
        const from = before[n];
        if (from !== undefined) path += (from + ((after[n] ?? from) - from) * part).toFixed(2);
    });
    return path;
}

/** Sets off and arrives gently, as a limb does. */
const eased = (part: number): number => part * part * (3 - 2 * part);

/** How far out a figure is, so many seconds into a part of a repetition. */
export function shareAt(motion: MotionView | null, seconds: number): number {
    if (!motion) return 0;
    const part = motion.seconds > 0 ? Math.min(Math.max(seconds / motion.seconds, 0), 1) : 1;
    switch (motion.phase) {
        case 'out':
            return eased(part);
        case 'hold':
            return 1;
        case 'back':
            return 1 - eased(part);
        case 'pause':
            return 0;
    }
}
