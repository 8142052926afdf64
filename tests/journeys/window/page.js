/** What the tests ask of the page. */
const helpers = (() => {
    // A word joiner is not read; it only keeps a number on one line.
    const clean = (text) => text.replace(/\u2060/gu, '').replace(/\s+/gu, ' ').trim();
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
