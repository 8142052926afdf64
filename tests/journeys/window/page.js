/** What the tests ask of the page. */
const helpers = (() => {
    // Joiners are not read; they only keep a number on one line, and a word on its line.
    const clean = (text) => text.replace(/[\u2060\u200C]/gu, '').replace(/\s+/gu, ' ').trim();
    const isShown = (element) => element.checkVisibility({ visibilityProperty: true });
    const controls = () => [...document.querySelectorAll('button, label, a[href]')].filter(isShown);
    const says = (element) => clean(element.innerText);

    return {
        text: (selector = 'body') => clean(document.querySelector(selector)?.innerText ?? ''),

        /** The control that says this, all of it or in one of its lines. */
        control(words) {
            const wanted = clean(words);
            const whole = controls().find((element) => says(element) === wanted);
            const parts = (element) => [...element.querySelectorAll('span')];
            const has = (element) => parts(element).some((part) => says(part) === wanted);
            const named = (element) => element.getAttribute('aria-label') === wanted;
            return whole ?? controls().find((element) => has(element) || named(element)) ?? null;
        },

        /** What has the focus: its name, its ring, and whether it can be seen. */
        focus() {
            const element = document.activeElement ?? document.body;
            const holder = element.closest('label') ?? element;
            // What cannot be seen itself shows its ring on its label.
            const ringed = getComputedStyle(holder).outlineStyle === 'none' ? element : holder;
            const { outlineStyle, outlineWidth, outlineOffset, outlineColor } = getComputedStyle(ringed);
            const { left, right, top, bottom } = holder.getBoundingClientRect();
            const across = (Math.max(left, 0) + Math.min(right, innerWidth)) / 2;
            const down = (Math.max(top, 0) + Math.min(bottom, innerHeight)) / 2;
            const there = document.elementFromPoint(across, down);
            return {
                name: element.getAttribute('aria-label') ?? says(holder),
                tag: element.tagName.toLowerCase(),
                data: { ...element.dataset },
                checked: element.checked ?? null,
                ring: [outlineStyle, outlineWidth, outlineOffset, outlineColor].join(' '),
                ink: getComputedStyle(document.documentElement).color,
                seen: there !== null && (holder.contains(there) || there.contains(holder)),
            };
        },

        /** Notes every state of a session that the page shows, from now on. */
        watch() {
            const seen = [];
            const look = () => {
                const of = (selector) => clean(document.querySelector(selector)?.textContent ?? '');
                const stage = document.querySelector('[data-stage]')?.dataset.stage ?? '';
                const tally = document.querySelector('.tally [role=img]')?.getAttribute('aria-label') ?? '';
                const now = [stage, of('h1'), of('.figures'), of('.phase'), tally].join('|');
                if (seen.at(-1) !== now) seen.push(now);
            };
            new MutationObserver(look).observe(document.body, {
                subtree: true,
                childList: true,
                characterData: true,
                attributes: true,
            });
            window.seenByTests = seen;
            look();
        },

        async axe(theme, tags, beyond) {
            const root = document.documentElement;
            const before = root.dataset.theme;
            root.dataset.theme = theme;
            try {
                const found = await window.axe.run(document, {
                    runOnly: { type: 'tag', values: tags },
                    rules: { [beyond]: { enabled: true } },
                    resultTypes: ['violations'],
                });
                const told = ({ html, failureSummary }) => [html.slice(0, 200), failureSummary];
                return found.violations.map(({ id, help, nodes }) => ({
                    id,
                    help,
                    nodes: nodes.slice(0, 5).map(told),
                }));
            } finally {
                if (before === undefined) delete root.dataset.theme;
                else root.dataset.theme = before;
            }
        },
    };
})();
