export declare const SECURITY_HEADERS: Record<string, string>;
export declare function trustedHeaders(isHttps: boolean, host: string): Record<string, string>;
