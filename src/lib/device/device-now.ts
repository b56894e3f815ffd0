/** What this device's own clock says, right or wrong, as an ISO instant: sent with acts, so that a wrong one shows in the record. */
export function deviceNow(): string {
	return new Date().toISOString();
}
