import { getContext, setContext } from 'svelte';
import type { ProblemView } from '../generated/bridge';

/** What stands around every page. */
export interface Around {
    /** The way to "When to stop and ring"; `null` where a page has its own, or there is nobody to ring yet. */
    readonly ring: { label: string; open: () => void } | null;
    /** What went wrong, where the page does not say it itself. */
    readonly problem: ProblemView | null;
}

const KEY = Symbol('around');

export function standAround(around: Around): void {
    setContext(KEY, around);
}

export function whatStandsAround(): Around | undefined {
    return getContext<Around | undefined>(KEY);
}
