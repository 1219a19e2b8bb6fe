/** See `licences.js`. */
export interface Bundled {
  readonly name: string
  readonly version: string
  readonly licence: string
  readonly text: string
}
export declare function bundledPackages(files: Iterable<string>): Promise<Bundled[]>
export declare const licenceText: (packages: readonly Bundled[]) => string
