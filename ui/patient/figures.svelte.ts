/** Figures that were asked for: each is fetched once for as long as the day and the plan stay as they are. */
import { untrack } from 'svelte';
import { SvelteMap } from 'svelte/reactivity';
import type { FigureAsked, FigureView } from '../generated/bridge';
import type { host } from './host';

type Host = Pick<typeof host, 'figure'>;

export class Figures {
    private readonly known = new SvelteMap<string, FigureView | null>();
    private readonly waiting = new Set<string>();
    /** Goes up with every new day and plan, so that whoever shows a figure asks again. */
    private age = $state(0);

    constructor(private readonly host: Host) {}

    /** The figure, if it has come. */
    of(asked: FigureAsked): FigureView | null {
        return this.known.get(this.keyOf(asked)) ?? null;
    }

    /** Asks for a figure, if nobody has. */
    async ask(asked: FigureAsked): Promise<void> {
        const key = this.keyOf(asked);
        if (untrack(() => this.known.has(key)) || this.waiting.has(key)) return;
        this.waiting.add(key);
        try {
            this.known.set(key, await this.host.figure(asked));
        } catch {
            // A page can be read without its figure; the next one to show it asks again.
        } finally {
            this.waiting.delete(key);
        }
    }

    /** A new day or a new plan may set other limits. */
    forget(): void {
        this.known.clear();
        untrack(() => (this.age += 1));
    }

    private keyOf(asked: FigureAsked): string {
        return [this.age, asked.item, asked.easier, asked.working, asked.both].join(' ');
    }
}
