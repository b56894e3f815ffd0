import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { contentCheck } from './scripts/content-plugin.ts';

export default defineConfig({
	plugins: [contentCheck(), sveltekit()],
	test: {
		include: ['tests/{unit,outside,screen}/**/*.test.ts'],
		environment: 'node',
		testTimeout: 20_000
	}
});
