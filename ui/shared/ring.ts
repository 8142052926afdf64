import { getContext, setContext } from 'svelte';

/** The way to "When to stop and ring", which every page offers that does not have it anyway. */
export interface Ring {
    readonly label: string;
    /** `null` where the page has a way of its own, or where there is nobody to ring yet. */
    readonly open: (() => void) | null;
}

const KEY = Symbol('ring');

export function offerRing(ring: Ring): void {
    setContext(KEY, ring);
}

export function ringOffered(): Ring | undefined {
    return getContext<Ring | undefined>(KEY);
}
