import { MediaQuery } from 'svelte/reactivity';

/** Whether reading and doing stand side by side: what moves between them is drawn in one place only. */
export const wide: { readonly current: boolean } =
    typeof window.matchMedia === 'function' ? new MediaQuery('(min-width: 900px)') : { current: false };
