import { flushSync, mount, unmount } from 'svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import Code from './parts/Code.svelte';
import Numbers from './parts/Numbers.svelte';

let mounted: Record<string, unknown> | undefined;

afterEach(async () => {
    if (mounted) await unmount(mounted);
    mounted = undefined;
    document.body.replaceChildren();
});

describe('Code', () => {
    function letter() {
        const onchange = vi.fn<(value: string) => void>();
        const blankLabels = ['First', 'Second', 'Third'] as const;
        mounted = mount(Code, { target: document.body, props: { label: 'Code', blankLabels, onchange } });
        flushSync();
        return { onchange, fields: [...document.querySelectorAll('input')] };
    }

    function type(field: HTMLInputElement | undefined, text: string) {
        if (!field) throw new Error('no such blank');
        field.value = text;
        field.dispatchEvent(new Event('input', { bubbles: true }));
        flushSync();
    }

    it('speaks of one value and goes on to the next blank when one is full', () => {
        const { onchange, fields } = letter();
        type(fields[0], 'km7q');
        expect(onchange).toHaveBeenLastCalledWith('KM7Q');
        expect(document.activeElement).toBe(fields[1]);
    });

    it('takes a whole code typed into one blank', () => {
        const { onchange, fields } = letter();
        type(fields[0], 'km7q-2xpd-9wrt');
        expect(onchange).toHaveBeenLastCalledWith('KM7Q2XPD9WRT');
        expect(fields.map((field) => field.value)).toEqual(['KM7Q', '2XPD', '9WRT']);
    });

    it('shows nothing of a character it refused', () => {
        const { fields } = letter();
        type(fields[0], 'K-');
        expect(fields[0]?.value).toBe('K');
    });
});

describe('Numbers', () => {
    it('names both ends and gives back the number chosen', () => {
        const onchoose = vi.fn<(number: number) => void>();
        mounted = mount(Numbers, {
            target: document.body,
            props: { label: 'Pain', none: 'none', worst: 'worst you can imagine', onchoose, chosen: 3 },
        });
        flushSync();
        const buttons = [...document.querySelectorAll('button')];
        expect(buttons.map((button) => button.getAttribute('aria-label'))).toEqual([
            '0, none',
            ...['1', '2', '3', '4', '5', '6', '7', '8', '9'],
            '10, worst you can imagine',
        ]);
        expect(buttons[3]?.getAttribute('aria-pressed')).toBe('true');
        buttons[7]?.click();
        expect(onchoose).toHaveBeenCalledWith(7);
    });
});
