import type { Finding } from '../length/finding.ts'

/** What is wrong with a picture; where it is named is for others to say. */
export type PictureTrouble = Pick<Finding, 'rule' | 'message' | 'suggestion'>

/** Whether an address is in no file: a scheme has two letters at least, for `c:` is a drive. */
export const isFar = (url: string): boolean => /^([a-z][a-z\d+.-]+:|\/\/)/i.test(url)

/** An address as a path: without what stands behind `?` or `#`, and without percent signs. */
export function decodedUrl(url: string): string {
  try {
    return decodeURIComponent(url.replace(/[?#].*$/, ''))
  } catch {
    return url
  }
}

/** A picture that is in no file. */
export const farPicture = (url: string, folderName: string): PictureTrouble => ({
  rule: 'picture-far',
  message: `The picture \`${short(url)}\` is not in a file beside the lesson`,
  suggestion: `Save it in ${folderName} and name that file`,
})

/** A picture from which the way leads out of the folder. */
export const outsidePicture = (url: string, folderName: string): PictureTrouble => ({
  rule: 'picture-outside',
  message: `The picture \`${short(url)}\` is outside ${folderName}`,
  suggestion: `Copy it into ${folderName} and name it from there`,
})

/** A picture that is not there, or must not be read. */
export const missingPicture = (url: string, folderName: string): PictureTrouble => ({
  rule: 'picture-missing',
  message: `The picture \`${short(url)}\` cannot be read`,
  suggestion: `Check the name of the file, counted from ${folderName}`,
})

/** A file that is no picture. */
export const noPicture = (url: string): PictureTrouble => ({
  rule: 'picture-kind',
  message: `\`${short(url)}\` is no picture that can be printed`,
  suggestion: 'Save it as PNG, JPEG, WebP, GIF or SVG',
})

/** A picture with more bytes than `most`. */
export const heavyPicture = (url: string, bytes: number, most: number): PictureTrouble => ({
  rule: 'picture-heavy',
  message: `The picture \`${short(url)}\` has ${Math.ceil(bytes / 1e6)} MB, more than a page can carry`,
  suggestion: `Save a smaller copy of it, of at most ${most / 1e6} MB`,
})

const short = (url: string): string => (url.length > 60 ? `${url.slice(0, 57)}…` : url)
