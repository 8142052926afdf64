/**
 * Arabic vowel marks at the end of a word.
 *
 * WebKitGTK draws a word as low as the first of its glyphs, and from right to left that is the mark under
 * the last letter: the whole word sinks below its line. A joiner that is not seen, after the mark, is
 * drawn first instead. On other web views it changes nothing.
 */
const FINAL_MARK = /[\u064B-\u0655\u0670](?![\u064B-\u0655\u0670\u200C\p{L}])/gu;

/** A text whose words stay on their line. */
export const levelled = (said: string): string => said.replace(FINAL_MARK, '$&\u200C');

/** The same for every text of a view. */
export function levelledAll<T>(view: T): T {
    if (typeof view === 'string') return levelled(view) as T;
    if (Array.isArray(view)) return view.map(levelledAll) as T;
    if (typeof view !== 'object' || view === null) return view;
    return Object.fromEntries(Object.entries(view).map(([name, value]) => [name, levelledAll(value)])) as T;
}
