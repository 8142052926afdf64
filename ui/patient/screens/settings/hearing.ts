import type { Hearing } from '../../../generated/bridge';
import { say } from '../../../shared/words.svelte';

/** How fast the voice can be chosen to speak, slowest first. Older ears follow slow speech better than fast. */
export const rates = [
    { value: -60, how: 'very-slow' },
    { value: -40, how: 'slow' },
    { value: -20, how: 'little-slow' },
    { value: 0, how: 'normal' },
    { value: 20, how: 'fast' },
] as const;

/** How high, lowest first. */
export const pitches = [
    { value: -30, how: 'lower' },
    { value: 0, how: 'normal' },
    { value: 30, how: 'higher' },
] as const;

/** The step that is nearest to what is set: it may have been set elsewhere, to any number. */
export function nearest<S extends { value: number }>(steps: readonly S[], value: number): S | undefined {
    const away = (step: S) => Math.abs(step.value - value);
    return steps.toSorted((one, other) => away(one) - away(other))[0];
}

/** "Voice: on, slow". */
export function sayVoice({ speech, rate }: Hearing): string {
    return say('hearing-voice', { how: speech ? (nearest(rates, rate)?.how ?? 'normal') : 'off' });
}
