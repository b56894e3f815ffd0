import { error } from '@sveltejs/kit';

/** Makes a form whose body cannot be read a fault of the sender (400), where the parser would throw. */
export function guardForm(request: Request): void {
	const read = request.formData.bind(request);
	request.formData = async () => {
		try {
			return await read();
		} catch (thrown) {
			// A body over the limit comes with a status of its own.
			if (thrown instanceof Error && !('status' in thrown)) {
				error(400, 'The form could not be read. Load the page again; nothing was written.');
			}
			throw thrown;
		}
	};
}
