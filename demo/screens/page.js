/** What is looked for in a page by whoever goes through every page. */
const sheets = (() => {
    const LEAST_PX = 17.99;
    const TARGET_PX = 55.5;
    const APART_PX = 7.5;
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

    /** The boxes around an element that hide what runs out of them, for good. */
    function hiding(element) {
        const boxes = [];
        for (let box = element; box && box !== document.body; box = box.parentElement) {
            const { overflowX, overflowY } = getComputedStyle(box);
            // What scrolls can be scrolled to.
            if (['auto', 'scroll'].includes(overflowX)) return { boxes, scrolls: true };
            if (['hidden', 'clip'].includes(overflowX) || ['hidden', 'clip'].includes(overflowY)) boxes.push(box);
        }
        return { boxes, scrolls: false };
    }

    /** Text that runs out of the window, or out of what cuts it off. */
    function cutText() {
        const cut = [];
        for (const [node, element] of pieces()) {
            const range = document.createRange();
            range.selectNodeContents(node);
            const { left, right, top, bottom } = range.getBoundingClientRect();
            const { boxes, scrolls } = hiding(element);
            const leaves = left < -1 || right > innerWidth + 1;
            if (leaves && !scrolls) cut.push(`text leaves the window: “${short(node.data)}”`);
            const isCut = boxes.some((box) => {
                const edge = box.getBoundingClientRect();
                const aside = left < edge.left - 1 || right > edge.right + 1;
                // Of a line, more than its own leading lies outside.
                return aside || top < edge.top - 4 || bottom > edge.bottom + 4;
            });
            const { textOverflow } = getComputedStyle(element);
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

    function targets() {
        const all = document.querySelectorAll('button, a[href], summary, label:has(input), input, textarea, select');
        const inLabel = (element) => element.matches('input') && element.closest('label');
        return [...all].filter((each) => isShown(each) && !isForReaders(each) && !inLabel(each));
    }

    function smallTargets() {
        return targets().flatMap((target) => {
            const { width, height } = target.getBoundingClientRect();
            const isSmall = width < TARGET_PX || height < TARGET_PX;
            const size = `${Math.round(width)} × ${Math.round(height)}`;
            return isSmall ? [`a target of ${size}: “${short(target.innerText || target.ariaLabel || '')}”`] : [];
        });
    }

    /** Targets that a shaking hand would take for each other. */
    function closeTargets() {
        const boxes = targets().map((target) => ({ target, box: target.getBoundingClientRect() }));
        const close = [];
        /** What it sticks to the window with, or scrolls in, if anything: the rest passes by that. */
        const stuck = (element) => {
            for (let at = element; at; at = at.parentElement) {
                const { position, overflowY } = getComputedStyle(at);
                if (position === 'sticky' || ['auto', 'scroll'].includes(overflowY)) return at;
            }
            return null;
        };
        boxes.forEach(({ target, box }, n) => {
            for (const { target: other, box: theirs } of boxes.slice(n + 1)) {
                if (target.contains(other) || other.contains(target) || stuck(target) !== stuck(other)) continue;
                const across = Math.max(theirs.left - box.right, box.left - theirs.right);
                const down = Math.max(theirs.top - box.bottom, box.top - theirs.bottom);
                const apart = Math.max(across, down);
                const named = [target, other].map((each) => `“${short(each.innerText || each.ariaLabel || '')}”`);
                if (apart < APART_PX) close.push(`targets ${apart.toFixed(0)} px apart: ${named.join(' and ')}`);
            }
        });
        return close;
    }

    /** What lies over a point of a target, given as shares of its sides, however it is scrolled. */
    function over(target, x, y) {
        let there = null;
        // What sticks to an edge leaves the upper part free, of the window or of what scrolls in it.
        for (const [block, goal] of [['center', 0.5], ['start', 0.25]]) {
            target.scrollIntoView({ block, behavior: 'instant' });
            const box = target.getBoundingClientRect();
            const down = box.top + y * box.height;
            scrollBy({ top: down - goal * innerHeight, behavior: 'instant' });
            const { left, top, width, height } = target.getBoundingClientRect();
            there = document.elementFromPoint(left + x * width, top + y * height);
            if (!there || target.contains(there)) return null;
        }
        return there;
    }

    function coveredTargets() {
        const all = [...document.querySelectorAll('*')];
        const before = all.map((element) => element.scrollTop);
        const shares = [0.2, 0.5, 0.8];
        const points = shares.flatMap((x) => shares.map((y) => [x, y]));
        const covered = targets().flatMap((target) => {
            const what = points.map(([x, y]) => over(target, x, y)).find((there) => there !== null);
            if (!what) return [];
            const said = short(target.innerText || target.ariaLabel || '');
            return [`${what.tagName.toLowerCase()} “${short(what.textContent ?? '')}” lies over “${said}”`];
        });
        all.forEach((element, n) => {
            if (element.scrollTop !== before[n]) element.scrollTop = before[n];
        });
        return covered;
    }

    return {
        /** Everything that is wrong with what is shown now. */
        wrong(seeksMain) {
            const main = seeksMain ? mainAction() : [];
            const aim = [...smallTargets(), ...closeTargets(), ...coveredTargets()];
            return [...new Set([...sideways(), ...smallText(), ...cutText(), ...main, ...aim])];
        },

        height: () => Math.max(document.documentElement.scrollHeight, innerHeight),
    };
})();
