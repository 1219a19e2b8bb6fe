/** Longest side of a picture that is stored, in pixels: sharp on half a page, and small enough to send. */
export const longestSide = 1600

/** Larger files are not read. */
const mostBytes = 80_000_000

/** Why a picture cannot be taken, in words. */
export interface NoPicture {
  readonly refused: string
}

/**
 * Draws a picture anew, upright and no larger than wanted. What the camera wrote into the file beside it (the place, the
 * time, the owner) is not drawn, and so is gone. JPEG, or PNG where it lets something show through or is smaller so.
 */
export async function scalePicture(file: Blob): Promise<Blob | NoPicture> {
  if (file.size > mostBytes) return { refused: 'it is too large to be read here. Make it smaller first' }
  const drawn = await decode(file)
  if (!drawn)
    return { refused: 'it is no picture that this browser can read. A JPEG or PNG file can be used' }
  const scale = Math.min(1, longestSide / Math.max(drawn.width, drawn.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(drawn.width * scale))
  canvas.height = Math.max(1, Math.round(drawn.height * scale))
  const pen = canvas.getContext('2d')
  if (!pen) return { refused: 'this browser cannot draw it' }
  pen.imageSmoothingQuality = 'high'
  pen.drawImage(drawn.image, 0, 0, canvas.width, canvas.height)
  drawn.done()
  const png = await encode(canvas, 'image/png')
  const made = showsThrough(pen, canvas) ? png : smaller(await encode(canvas, 'image/jpeg'), png)
  return made ?? { refused: 'this browser cannot write it' }
}

interface Drawn {
  readonly image: CanvasImageSource
  readonly width: number
  readonly height: number
  done(): void
}

async function decode(file: Blob): Promise<Drawn | undefined> {
  if (file.type !== 'image/svg+xml')
    try {
      const image = await createImageBitmap(file, { imageOrientation: 'from-image' })
      return { image, width: image.width, height: image.height, done: () => image.close() }
    } catch {
      return undefined
    }
  // A drawing in an `img` runs no script and fetches nothing.
  const address = URL.createObjectURL(file)
  try {
    const image = new Image()
    image.src = address
    await image.decode()
    const { naturalWidth: wide, naturalHeight: high } = image
    // A drawing has no pixels of its own: it is drawn as large as it may be stored.
    const grow = longestSide / Math.max(wide, high, 1)
    return wide > 0 && high > 0 ? { image, width: wide * grow, height: high * grow, done() {} } : undefined
  } catch {
    return undefined
  } finally {
    URL.revokeObjectURL(address)
  }
}

const encode = (canvas: HTMLCanvasElement, type: string): Promise<Blob | null> =>
  new Promise((resolve) => canvas.toBlob(resolve, type, 0.86))

const smaller = (one: Blob | null, other: Blob | null): Blob | null =>
  one && other ? (one.size <= other.size ? one : other) : (one ?? other)

function showsThrough(pen: CanvasRenderingContext2D, { width, height }: HTMLCanvasElement): boolean {
  const { data } = pen.getImageData(0, 0, width, height)
  for (let at = 3; at < data.length; at += 4) if ((data[at] ?? 255) < 255) return true
  return false
}
