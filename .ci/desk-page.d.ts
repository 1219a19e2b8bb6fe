/** See `desk-page.js`. */
export declare function buildDesk(path: string, options?: { readonly minify?: boolean }): Promise<string[]>
