// Times a large plan beside a floor of the same size and prints both. It asserts nothing: other work
// on the machine slows both alike, so the ratio is what may be compared.
import { createServer } from 'vite';

// The core is TypeScript without a build step, so that the bench measures the sources as they are.
const vite = await createServer({
	configFile: false,
	appType: 'custom',
	logLevel: 'error',
	server: { middlewareMode: true, watch: null, hmr: false }
});
try {
	const { benchPlan } = await vite.ssrLoadModule('/tests/bench/plan.bench.ts');
	console.log(benchPlan().join('\n'));
} finally {
	await vite.close();
}
