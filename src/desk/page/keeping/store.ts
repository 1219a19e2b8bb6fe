/** A file as it lies in a folder. `version` names its content: the same content has the same one. */
export interface Kept {
  readonly path: string
  readonly text: string
  readonly version: string
}

/** A file that could be opened. */
export interface Listed {
  readonly path: string
  readonly title: string
  readonly kind: 'lesson' | 'class'
  /** Milliseconds since 1970. */
  readonly changed?: number
}

/** A `workshop.yaml` as it lies in a folder. */
export type WorkshopText = Pick<Kept, 'path'> & Partial<Pick<Kept, 'text'>>

/** What came of saving: the new version, or, when another program has changed the file meanwhile, what it holds now. */
export type Saved = { readonly version: string } | { readonly other: Kept }

/** Where lessons lie: a folder behind the local server, a folder that the browser was let into, or nothing but downloads. */
export interface Store {
  readonly kind: 'server' | 'folder' | 'downloads'
  /** What the teacher calls it: `harbour lessons`. */
  readonly name: string
  /** Tells it from other folders of the same name, and is the same when the page comes back. Kind and name without it. */
  readonly id?: string
  list(): Promise<readonly Listed[]>
  read(path: string): Promise<Kept>
  /**
   * Saves whole or not at all, and only over what was read.
   *
   * @param over the version that was read; undefined for a new file, which never overwrites one.
   */
  save(path: string, text: string, over: string | undefined): Promise<Saved>
  /** A picture beside the lesson, as a data address; undefined when there is none. */
  picture(lesson: string, address: string): Promise<string | undefined>
  /**
   * The `workshop.yaml` of the folder of a lesson or class file, or else of the one above; without its text where it cannot
   * be read. Undefined where there is no folder.
   */
  readonly workshop?: (path: string) => Promise<WorkshopText | undefined>
  /** Stores a picture beside the lesson under a free name like the given one, and gives the address to write. */
  addPicture(lesson: string, name: string, data: Blob): Promise<string>
  /** Calls back with the path of each file that another program changes; gives what stops that. */
  watch(changed: (path: string) => void): () => void
  /** Prints through the server; undefined where there is none. */
  readonly print?: (what: PrintWish) => Promise<Printed>
}

/**
 * Why a store could not do something, with words for the teacher as its message.
 *
 * `away`: it does not answer, and may answer later. `missing`: there is no such file. `refused`: it must not, or the
 * name is none. `full`: there is no room. Anything else that a store throws is taken for `away`.
 */
export class StoreTrouble extends Error {
  readonly kind: 'away' | 'missing' | 'refused' | 'full'
  constructor(kind: StoreTrouble['kind'], words: string) {
    super(words)
    this.kind = kind
  }
}

/** A PDF, and what its making has shown, as whole sentences. */
export interface Printed {
  readonly pdf: Blob
  readonly notes: readonly string[]
}

/** What the server is asked to print. */
export interface PrintWish {
  readonly path: string
  readonly text: string
  readonly what: 'handout' | 'template' | 'sizes'
  readonly closed?: string
  readonly units?: 'in' | 'mm'
  readonly paper: 'a4' | 'letter'
  readonly theme: string
}
