export const BLANKS = 3;
export const BLANK_LENGTH = 4;

/** The code as it is compared: people type small letters, and copy the hyphens and spaces of a letter along. */
export function normaliseCode(typed: string): string {
    return typed
        .normalize('NFKC')
        .toUpperCase()
        .replace(/[^A-Z0-9]/g, '')
        .slice(0, BLANKS * BLANK_LENGTH);
}

export function splitCode(code: string): string[] {
    const whole = normaliseCode(code);
    return Array.from({ length: BLANKS }, (_, blank) =>
        whole.slice(blank * BLANK_LENGTH, (blank + 1) * BLANK_LENGTH),
    );
}

/**
 * The blanks after `typed` has come to stand in blank `at`: what does not fit flows on into the next ones, and a
 * whole code fills them all wherever it was pasted.
 */
export function fillBlanks(blanks: readonly string[], at: number, typed: string): string[] {
    const text = normaliseCode(typed);
    if (text.length === BLANKS * BLANK_LENGTH) return splitCode(text);
    const filled = [...blanks];
    let rest = text;
    for (let blank = at; blank < BLANKS; blank += 1) {
        filled[blank] = rest.slice(0, BLANK_LENGTH);
        rest = rest.slice(BLANK_LENGTH);
        if (rest === '') break;
    }
    return filled;
}
