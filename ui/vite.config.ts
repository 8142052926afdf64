import { fileURLToPath } from 'node:url';
import { FluentResource } from '@fluent/bundle';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

/** Messages are parsed when the window is built, so that its start need not do it. */
const messages: Plugin = {
    name: 'messages',
    transform(text, id) {
        if (!id.endsWith('.ftl')) return null;
        const { body } = new FluentResource(text);
        return {
            code: `export default () => JSON.parse(${JSON.stringify(JSON.stringify(body))})`,
            map: null,
        };
    },
};

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
    root: here('./patient'),
    base: './',
    plugins: [messages, svelte({ configFile: here('./svelte.config.js') })],
    resolve: {
        alias: { '@locales': here('../locales') },
        // Without it, tests would mount the server build of Svelte, which has no DOM.
        conditions: process.env['VITEST'] ? ['browser'] : ['browser', 'module', 'import', 'default'],
    },
    server: { fs: { allow: [here('.'), here('../locales')] } },
    build: {
        outDir: here('./dist/patient'),
        emptyOutDir: true,
        target: 'safari16.4',
        cssTarget: 'safari16.4',
        // The content policy admits files of our own only, so nothing may be folded into data: URLs.
        assetsInlineLimit: 0,
        modulePreload: { polyfill: false },
    },
    test: {
        root: here('.'),
        include: ['shared/**/*.test.ts', 'patient/**/*.test.ts'],
        environment: 'jsdom',
        setupFiles: ['shared/test-setup.ts'],
        passWithNoTests: false,
    },
});
