import type { Draft, Drafts, Earlier } from './drafts.ts'

/** What is used of `localStorage`. */
export interface Shelf {
  readonly length: number
  key(place: number): string | null
  getItem(key: string): string | null
  setItem(key: string, value: string): void
  removeItem(key: string): void
}

const prefix = 'foldlore draft '

/** Drafts on the small shelf that every browser has: written at once, little room, no earlier texts. */
export function smallDrafts(shelf: Shelf): Drafts {
  const get = (lesson: string): Draft | undefined => read(shelf, prefix + lesson)
  const put = (draft: Draft): boolean => {
    const before = get(draft.lesson)
    if (before && before.turn > draft.turn) return false
    const { state: _, ...bare } = draft
    try {
      shelf.setItem(prefix + draft.lesson, JSON.stringify(draft))
    } catch {
      // Undo takes the most room.
      shelf.setItem(prefix + draft.lesson, JSON.stringify(bare))
    }
    return true
  }
  return {
    get: async (lesson) => get(lesson),
    put: async (draft) => put(draft),
    putNow(draft) {
      try {
        put(draft)
      } catch {
        // There is no room, and nobody to tell: the page is going.
      }
    },
    drop: async (lesson) => shelf.removeItem(prefix + lesson),
    all: async () => drafts(shelf).sort((a, b) => b.changed - a.changed),
    earlier: async (): Promise<readonly Earlier[]> => [],
    keepEarlier: async () => {},
    forget: async () => {},
    rename: async () => {},
  }
}

function drafts(shelf: Shelf): Draft[] {
  const keys = Array.from({ length: shelf.length }, (_, place) => shelf.key(place))
  return keys.flatMap((key) => (key?.startsWith(prefix) ? (read(shelf, key) ?? []) : []))
}

function read(shelf: Shelf, key: string): Draft | undefined {
  try {
    const draft = JSON.parse(shelf.getItem(key) ?? 'null') as Draft | null
    return draft && typeof draft.text === 'string' && typeof draft.lesson === 'string' ? draft : undefined
  } catch {
    return undefined
  }
}
