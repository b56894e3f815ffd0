import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from '../svelte.config.js';

const why = {
	core: 'The core is pure: it sees no screen, no clock, no chance and no store.',
	screen: 'Components take data and callbacks, and nothing else.',
	inward:
		'Inside core: quantity, then language, then log (hashes and the chain, blind to what an event says), then laws, then geometry and materials, then mesh, then plan, then process, then training, then bench.'
};

const CORE_FORBIDDEN = [
	'$app/*',
	'$env/*',
	'$lib/*',
	'svelte',
	'svelte/*',
	'node:*',
	'kysely',
	'better-sqlite3',
	'@sveltejs/*'
];

/** Folders of core, innermost first; a folder may import itself and those before it. */
const CORE_ORDER = [
	['quantity'],
	['language'],
	['log'],
	['laws'],
	['geometry', 'materials'],
	['mesh'],
	['plan'],
	['process'],
	['training'],
	['bench']
];

const coreWalls = CORE_ORDER.flatMap((folders, level) =>
	folders.map((folder) => {
		const outside = CORE_ORDER.slice(level)
			.flat()
			.filter((other) => other !== folder);
		return {
			files: [`src/lib/core/${folder}/**/*.ts`],
			rules: {
				'no-restricted-imports': [
					'error',
					{
						patterns: [
							{ group: CORE_FORBIDDEN, message: why.core },
							// The outermost folder may import them all, and the rule takes no empty group.
							...(outside.length > 0
								? [{ group: outside.map((other) => `**/${other}/**`), message: why.inward }]
								: [])
						]
					}
				]
			}
		};
	})
);

export default ts.config(
	{ ignores: ['build/', '.svelte-kit/', 'node_modules/', 'data/', 'test-results/'] },
	js.configs.recommended,
	...ts.configs.recommended,
	...svelte.configs.recommended,
	{
		languageOptions: { globals: { ...globals.browser, ...globals.node } },
		rules: {
			'no-undef': 'off',
			'@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
			'no-console': ['error', { allow: ['warn', 'error'] }]
		}
	},
	{
		files: ['**/*.svelte', '**/*.svelte.ts'],
		languageOptions: {
			parserOptions: { parser: ts.parser, extraFileExtensions: ['.svelte'], svelteConfig }
		},
		rules: {
			// The app is always served from the root of its own address.
			'svelte/no-navigation-without-resolve': 'off'
		}
	},
	{
		files: ['scripts/**', 'tests/**', '*.config.*'],
		rules: { 'no-console': 'off' }
	},
	{
		files: ['src/lib/core/**/*.ts'],
		rules: {
			'no-restricted-imports': [
				'error',
				{ patterns: [{ group: CORE_FORBIDDEN, message: why.core }] }
			],
			'no-restricted-globals': [
				'error',
				...[
					'window',
					'document',
					'localStorage',
					'indexedDB',
					'fetch',
					'setTimeout',
					'setInterval',
					'crypto',
					'process',
					'performance'
				].map((name) => ({ name, message: why.core }))
			],
			'no-restricted-properties': [
				'error',
				{ object: 'Date', property: 'now', message: 'Take the instant as a parameter.' },
				{ object: 'Math', property: 'random', message: 'Take the random source as a parameter.' }
			],
			'no-restricted-syntax': [
				'error',
				{
					selector: "NewExpression[callee.name='Date'][arguments.length=0]",
					message: 'Take the instant as a parameter.'
				}
			]
		}
	},
	...coreWalls,
	{
		files: ['src/lib/device/**'],
		rules: {
			'no-restricted-imports': [
				'error',
				{ patterns: ['$lib/server/*', '$lib/screen/*', '**/routes/**'] }
			]
		}
	},
	{
		files: ['src/lib/server/**'],
		rules: {
			'no-restricted-imports': [
				'error',
				{ patterns: ['$lib/device/*', '$lib/screen/*', '**/routes/**'] }
			]
		}
	},
	{
		files: ['src/lib/screen/**'],
		rules: {
			'no-restricted-imports': [
				'error',
				{
					patterns: [
						{
							group: ['$lib/device/*', '$lib/server/*', '$app/*', '**/routes/**'],
							message: why.screen
						}
					]
				}
			]
		}
	},
	{
		files: ['src/routes/**/*.svelte', 'src/routes/**/+page.ts', 'src/routes/**/+layout.ts'],
		rules: { 'no-restricted-imports': ['error', { patterns: ['$lib/server/*'] }] }
	}
);
