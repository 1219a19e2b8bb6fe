import type { Handed } from './tabs.ts'

/** What one tab writes to the others. */
export type Letter =
  | { readonly kind: 'ask' | 'give'; readonly lesson: string; readonly from: string }
  | { readonly kind: 'now'; readonly lesson: string; readonly from: string; readonly handed: Handed }
  | {
      readonly kind: 'given'
      readonly lesson: string
      readonly from: string
      readonly to: string
      readonly handed: Handed
    }

/** A channel to the other tabs: what is used of a `BroadcastChannel`. */
export interface Post {
  onmessage: ((event: { readonly data: Letter }) => void) | null
  postMessage(letter: Letter): void
  addEventListener(kind: 'message', hear: (event: { readonly data: Letter }) => void): void
  removeEventListener(kind: 'message', hear: (event: { readonly data: Letter }) => void): void
  close(): void
}

/** Writes to the other tabs and waits for an answer; undefined when none comes in time. */
export function ask<K extends 'now' | 'given'>(
  post: Post,
  letter: Letter,
  answer: K,
  patience: number,
): Promise<Extract<Letter, { readonly kind: K }> | undefined> {
  return new Promise((resolve) => {
    const done = (heard: Extract<Letter, { readonly kind: K }> | undefined): void => {
      clearTimeout(timer)
      post.removeEventListener('message', hear)
      resolve(heard)
    }
    const hear = ({ data }: { readonly data: Letter }): void => {
      if (data.kind !== answer || data.lesson !== letter.lesson) return
      if (data.kind === 'given' && data.to !== letter.from) return
      done(data as Extract<Letter, { readonly kind: K }>)
    }
    const timer = setTimeout(() => done(undefined), patience)
    post.addEventListener('message', hear)
    post.postMessage(letter)
  })
}
