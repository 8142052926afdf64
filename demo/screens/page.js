/** What the contact sheets ask of the page. */
const sheets = (() => {
    const LEAST_PX = 17.99;
    const TARGET_PX = 55.5;
    const clean = (text) => text.replace(/\s+/gu, ' ').trim();
    const isShown = (element) => element.checkVisibility({ visibilityProperty: true });
    // What only a screen reader gets is one clipped pixel.
    const isForReaders = (element) => element.getBoundingClientRect().width <= 1.5;
    const short = (text) => clean(text).slice(0, 60);

    /** Every piece of text that is seen, with its element. */
    function* pieces() {
        const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        while (walker.nextNode()) {
            const { currentNode: node } = walker;
            const element = node.parentElement;
            const unseen = ['TITLE', 'DESC', 'SCRIPT', 'STYLE'].includes(element.tagName.toUpperCase());
            if (clean(node.data) && !unseen && isShown(element) && !isForReaders(element)) yield [node, element];
        }
    }

    /** How large a text is on the screen, in a drawing too. */
    function sizeOf(element) {
        const size = Number.parseFloat(getComputedStyle(element).fontSize);
        const matrix = element instanceof SVGElement ? element.getScreenCTM?.() : null;
        return matrix ? size * Math.hypot(matrix.a, matrix.b) : size;
    }

    function sideways() {
        const { scrollWidth } = document.documentElement;
        return scrollWidth > innerWidth ? [`scrolls sideways: ${scrollWidth} px in ${innerWidth}`] : [];
    }

    function smallText() {
        const small = [...pieces()].filter(([, element]) => sizeOf(element) < LEAST_PX);
        return small.map(([node, element]) => `text of ${sizeOf(element).toFixed(1)} px: “${short(node.data)}”`);
    }

    /** Text that runs out of the window, or out of what cuts it off. */
    function cutText() {
        const cut = [];
        for (const [node, element] of pieces()) {
            const range = document.createRange();
            range.selectNodeContents(node);
            const { left, right } = range.getBoundingClientRect();
            if (left < -1 || right > innerWidth + 1) cut.push(`text leaves the window: “${short(node.data)}”`);
            const { overflowX, textOverflow } = getComputedStyle(element);
            const isCut = overflowX !== 'visible' && element.scrollWidth > element.clientWidth + 1;
            if (isCut || textOverflow === 'ellipsis') cut.push(`text is cut off: “${short(node.data)}”`);
        }
        return cut;
    }

    /** One main action, and it is in sight without scrolling. */
    function mainAction() {
        const of = (kind) => [...document.querySelectorAll(`.action.${kind}`)].filter(isShown);
        const mains = of('main');
        const found = mains.length > 1 ? [`${mains.length} main actions`] : [];
        const main = mains[0] ?? of('ring')[0];
        if (!main) return found;
        const { top, bottom } = main.getBoundingClientRect();
        const isSeen = top >= -1 && bottom <= innerHeight + 1;
        const where = `${Math.round(top)} to ${Math.round(bottom)} of ${innerHeight}`;
        return isSeen ? found : [...found, `the main action is out of sight (${where}): “${short(main.innerText)}”`];
    }

    function smallTargets() {
        const targets = [...document.querySelectorAll('button, a[href], summary, label:has(input)')].filter(isShown);
        return targets.flatMap((target) => {
            const { width, height } = target.getBoundingClientRect();
            const isSmall = width < TARGET_PX || height < TARGET_PX;
            const size = `${Math.round(width)} × ${Math.round(height)}`;
            return isSmall && !isForReaders(target) ? [`a target of ${size}: “${short(target.innerText)}”`] : [];
        });
    }

    return {
        /** Everything that is wrong with what is shown now. */
        wrong(isNormalText, seeksMain) {
            const small = isNormalText ? smallText() : [];
            const main = seeksMain ? mainAction() : [];
            return [...new Set([...sideways(), ...small, ...cutText(), ...main, ...smallTargets()])];
        },

        height: () => Math.max(document.documentElement.scrollHeight, innerHeight),
    };
})();
