// The server-only package throws outside a server bundle; tests and the headless command are neither.
export {};
