// Before anything is painted: the look chosen on this device, so that no page flashes in another one.
// The same key as in ThemeSwitch.svelte.
try {
	const choice = localStorage.getItem('glovewright-light');
	if (choice && choice !== 'auto') document.documentElement.dataset.theme = choice;
} catch {
	// Storage may be closed to us; then the system's choice holds.
}
