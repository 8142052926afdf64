import { FluentBundle, type FluentResource, type FluentVariable } from '@fluent/bundle';
import { levelled } from './marks';

/** The same files that the programs speak from, parsed; what only Rust says is left out. */
const files = import.meta.glob<() => FluentResource['body']>(
    [
        '../../locales/*/*.ftl',
        '!../../locales/*/{clinic,errors,fhir,letter,movements-*,problems,report,sheet,stage,today}.ftl',
    ],
    { import: 'default', eager: true },
);

let lang = $state('en');
const bundles = new Map<string, FluentBundle>();

/** Numbers have the same digits on every page, those of the numbers to ring: Rust writes them so too. */
const localeOf = (tag: string): string => `${tag}-u-nu-latn`;

function bundleOf(tag: string): FluentBundle {
    const known = bundles.get(tag);
    if (known) return known;
    const bundle = new FluentBundle(localeOf(tag), { useIsolating: false });
    for (const [path, parsed] of Object.entries(files)) {
        if (path.split('/').at(-2) === tag) bundle.addResource({ body: parsed() });
    }
    bundles.set(tag, bundle);
    return bundle;
}

/** Speaks another language from now on; whatever shows a message follows by itself. */
export function speak(tag: string): void {
    lang = tag;
}

/** The language that is spoken. */
export function spoken(): string {
    return lang;
}

/** A message in the chosen language, else in English; the id only if there is none, which a test rules out. */
export function say(id: string, args: Record<string, FluentVariable> = {}): string {
    for (const tag of [lang, 'en']) {
        const bundle = bundleOf(tag);
        const pattern = bundle.getMessage(id)?.value;
        // A variable that is missing is shown as its name; it must not take the page away.
        if (pattern) return levelled(bundle.formatPattern(pattern, args, []));
    }
    return id;
}

/** Several things: "a, b and c". */
export function listed(things: readonly string[]): string {
    const last = things.at(-1);
    if (things.length < 2 || last === undefined) return last ?? '';
    return say('list-last', { first: things.slice(0, -1).join(say('list-comma')), last });
}
