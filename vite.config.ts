import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	test: {
		include: ['tests/{unit,outside,screen}/**/*.test.ts'],
		environment: 'node',
		testTimeout: 20_000
	}
});
