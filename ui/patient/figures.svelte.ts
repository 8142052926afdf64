/** Figures that were asked for: each is fetched once for as long as the day and the plan stay as they are. */
import { SvelteMap } from 'svelte/reactivity';
import type { FigureAsked, FigureView } from '../generated/bridge';
import type { host } from './host';

type Host = Pick<typeof host, 'figure'>;

export class Figures {
    private readonly known = new SvelteMap<string, FigureView | null>();
    private readonly waiting = new Set<string>();
    private age = 0;

    constructor(private readonly host: Host) {}

    /** The figure, if it has come; asks for it if nobody has. */
    of(asked: FigureAsked): FigureView | null {
        return this.known.get(keyOf(asked)) ?? null;
    }

    async ask(asked: FigureAsked): Promise<void> {
        const key = keyOf(asked);
        if (this.known.has(key) || this.waiting.has(key)) return;
        this.waiting.add(key);
        const age = this.age;
        try {
            const figure = await this.host.figure(asked);
            if (age === this.age) this.known.set(key, figure);
        } catch {
            // A page can be read without its figure; the next one to show it asks again.
        } finally {
            this.waiting.delete(key);
        }
    }

    /** A new day or a new plan may set other limits. */
    forget(): void {
        this.age += 1;
        this.waiting.clear();
        this.known.clear();
    }
}

function keyOf(asked: FigureAsked): string {
    return [asked.item, asked.easier, asked.working, asked.both].join(' ');
}
